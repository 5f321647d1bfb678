using Duskwright.Light.Perception;

namespace Duskwright.Light.Colour;

/// <summary>How unlike two lights look when they are equally bright.</summary>
public static class ColourDifference
{
    /// <summary>From here on a difference is just noticed side by side, ΔE*ab (colour-science/colour, JND_CIE1976).</summary>
    public const double Noticed = 2.3;

    /// <summary>From here on anyone notices it, ΔE*ab (same source: 3.5 to 5).</summary>
    public const double Plain = 5;

    /// <summary>The white that the eye takes as such: lamplight, CIE illuminant A (CIE 15).</summary>
    public static Chromaticity Lamplight { get; } = new(0.44758, 0.40745);

    /// <summary>Place of a light as bright as the white in CIE 1976 L*a*b* (CIE 15).</summary>
    /// <param name="light">The light.</param>
    /// <param name="white">What looks white.</param>
    /// <returns>a* (red above zero, green below) and b* (yellow above zero, blue below); L* is 100.</returns>
    public static (double A, double B) Place(Chromaticity light, Chromaticity white) =>
        (500 * (Root(light.X / light.Y, white.X / white.Y) - 1), 200 * (1 - Root(Z(light), Z(white))));

    /// <summary>Distance of two lights of one brightness, ΔE*ab.</summary>
    /// <param name="one">A light.</param>
    /// <param name="other">Another.</param>
    /// <param name="white">What looks white.</param>
    /// <returns>0 for the same light.</returns>
    public static double Between(Chromaticity one, Chromaticity other, Chromaticity white)
    {
        var (a, b) = Place(one, white);
        var (c, d) = Place(other, white);
        return Math.Sqrt(((a - c) * (a - c)) + ((b - d) * (b - d)));
    }

    private static double Z(Chromaticity c) => (1 - c.X - c.Y) / c.Y;

    // L*, a* and b* are cut from one curve: L* = 116·f − 16.
    private static double Root(double value, double white) => (Lightness.OfShare(value / white) + 16) / 116;
}
