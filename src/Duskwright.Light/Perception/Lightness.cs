namespace Duskwright.Light.Perception;

/// <summary>Lightness L* as the eye sees shares of a white's luminance (CIE 1976, CIE 15).</summary>
public static class Lightness
{
    private const double Knee = 6.0 / 29.0;

    /// <summary>Lightness of a share of the white's luminance.</summary>
    /// <param name="share">Luminance over that of the white, zero or more.</param>
    /// <returns>L*, 0 for black, 100 for the white.</returns>
    public static double OfShare(double share) =>
        share > Knee * Knee * Knee
            ? (116 * Math.Cbrt(share)) - 16
            : 116 * share / (3 * Knee * Knee);

    /// <summary>The share of the white's luminance that has a lightness.</summary>
    /// <param name="lightness">L*, zero or more.</param>
    /// <returns>Luminance over that of the white.</returns>
    public static double ShareOf(double lightness)
    {
        var f = (lightness + 16) / 116;
        return f > Knee ? f * f * f : 3 * Knee * Knee * lightness / 116;
    }
}
