namespace Duskwright.Light.Colour;

/// <summary>A colour for a screen, IEC 61966-2-1.</summary>
/// <param name="Red">Linear red, 0 to 1.</param>
/// <param name="Green">Linear green, 0 to 1.</param>
/// <param name="Blue">Linear blue, 0 to 1.</param>
/// <param name="Outside">Whether the light itself lies outside what a screen can show and was mapped.</param>
public readonly record struct Srgb(double Red, double Green, double Blue, bool Outside)
{
    /// <summary>Encoded as on a page: #FFB547.</summary>
    public string Hex => $"#{Byte(Red):X2}{Byte(Green):X2}{Byte(Blue):X2}";

    /// <summary>
    /// A light's hue at the brightest a screen can show it. What lies outside is mixed with daylight white of the same luminance until it just fits
    /// (desaturation at constant luminance), then made as bright as the screen allows.
    /// </summary>
    /// <param name="light">The light, not dark.</param>
    /// <returns>The colour, its largest part 1.</returns>
    public static Srgb Brightest(Tristimulus light)
    {
        var (r, g, b) = Linear(1 / light.Y * light);
        var least = Math.Min(r, Math.Min(g, b));

        // White of luminance 1 has all three at 1: mixing in the share w gives v + w·(1 − v).
        var white = least < 0 ? -least / (1 - least) : 0;
        (r, g, b) = (r + (white * (1 - r)), g + (white * (1 - g)), b + (white * (1 - b)));
        var most = Math.Max(r, Math.Max(g, b));
        return new(Math.Max(0, r / most), Math.Max(0, g / most), Math.Max(0, b / most), least < -RoundingOfMatrix);
    }

    /// <summary>Linear parts, not clipped: below 0 a light lies outside.</summary>
    /// <param name="light">The light; daylight white of Y = 1 has all three at 1.</param>
    /// <returns>Red, green and blue.</returns>
    public static (double Red, double Green, double Blue) Linear(Tristimulus light) => (
        (3.2406 * light.X) - (1.5372 * light.Y) - (0.4986 * light.Z),
        (-0.9689 * light.X) + (1.8758 * light.Y) + (0.0415 * light.Z),
        (0.0557 * light.X) - (0.2040 * light.Y) + (1.0570 * light.Z));

    /// <summary>A linear part as it is written to a screen.</summary>
    /// <param name="linear">0 to 1.</param>
    /// <returns>0 to 1.</returns>
    public static double Encoded(double linear) => linear <= 0.0031308 ? 12.92 * linear : (1.055 * Math.Pow(linear, 1 / 2.4)) - 0.055;

    // The standard's matrix has four digits.
    private const double RoundingOfMatrix = 1e-3;

    private static int Byte(double linear) => (int)Math.Round(255 * Encoded(linear));
}
