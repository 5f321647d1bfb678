namespace Duskwright.Light.Flicker;

/// <summary>How large a flashing area may be before its rate can harm people who are sensitive to it.</summary>
public static class FlashLimits
{
    /// <summary>The most flashing area at once within any 10° of the field of view, sr (general flash threshold, WCAG 2).</summary>
    public const double MostSteradians = 0.006;

    /// <summary>The most flashes in any one second above that area (WCAG 2).</summary>
    public const double MostFlashesPerSecond = 3;

    /// <summary>From this rate on flashes can set off seizures, up to 60 Hz for some (Epilepsy Society), Hz.</summary>
    public const double LeastProvokingHertz = 3;

    /// <summary>Up to this rate, Hz.</summary>
    public const double MostProvokingHertz = 60;

    /// <summary>Solid angle of a small flat thing: A·cos β/d².</summary>
    /// <param name="squareMetres">Its area, m².</param>
    /// <param name="metres">From the eye, m, more than 0.</param>
    /// <param name="cosine">Cosine of the angle from square on.</param>
    /// <returns>sr.</returns>
    public static double Steradians(double squareMetres, double metres, double cosine) => squareMetres * cosine / (metres * metres);

    /// <summary>Whether an area that flashes together stays within the limits: small enough, or slow enough.</summary>
    /// <param name="steradians">All of it within 10°, sr.</param>
    /// <param name="flashesPerSecond">Its rate, Hz.</param>
    /// <returns>True where it does.</returns>
    public static bool Within(double steradians, double flashesPerSecond) => steradians <= MostSteradians || flashesPerSecond <= MostFlashesPerSecond;
}
