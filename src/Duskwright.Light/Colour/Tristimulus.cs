namespace Duskwright.Light.Colour;

/// <summary>A light as the CIE 1931 observer sees it.</summary>
/// <param name="X">X.</param>
/// <param name="Y">Y, in step with luminance.</param>
/// <param name="Z">Z.</param>
public readonly record struct Tristimulus(double X, double Y, double Z)
{
    /// <summary>Two lights in one place.</summary>
    public static Tristimulus operator +(Tristimulus one, Tristimulus other) => new(one.X + other.X, one.Y + other.Y, one.Z + other.Z);

    /// <summary>More or less of a light.</summary>
    public static Tristimulus operator *(double times, Tristimulus light) => new(times * light.X, times * light.Y, times * light.Z);

    /// <summary>Its colour without its luminance; the light is not dark.</summary>
    public Chromaticity Chromaticity => new(X / (X + Y + Z), Y / (X + Y + Z));
}
