namespace Duskwright.Light.Colour;

/// <summary>A colour without its luminance, CIE 1931.</summary>
/// <param name="X">x.</param>
/// <param name="Y">y, more than zero.</param>
public readonly record struct Chromaticity(double X, double Y)
{
    // Farther than this from the glowing bodies a colour temperature means nothing (CIE 15).
    private const double FarthestDuv = 0.05;
    private const double ColdestKelvin = 1000;
    private const double HottestKelvin = 25000;

    /// <summary>u of the CIE 1960 diagram.</summary>
    public double U => 4 * X / ((12 * Y) - (2 * X) + 3);

    /// <summary>v of the CIE 1960 diagram.</summary>
    public double V => 6 * Y / ((12 * Y) - (2 * X) + 3);

    /// <summary>
    /// Correlated colour temperature: the glowing body nearest in the CIE 1960 diagram (CIE 15), between 1000 and 25 000 K.
    /// </summary>
    /// <returns>Kelvin and distance Duv (more than zero above the glowing bodies); none for a colour farther than 0.05 from them.</returns>
    public (double Kelvin, double Duv)? ColourTemperature()
    {
        // In mired the distance has one dip; golden section finds it.
        var ratio = (Math.Sqrt(5) - 1) / 2;
        var (low, high) = (1e6 / HottestKelvin, 1e6 / ColdestKelvin);
        for (var i = 0; i < 40; i++)
        {
            var (a, b) = (high - (ratio * (high - low)), low + (ratio * (high - low)));
            (low, high) = Distance(a).Away < Distance(b).Away ? (low, b) : (a, high);
        }

        var kelvin = 2e6 / (low + high);
        var (away, above) = Distance((low + high) / 2);
        return away > FarthestDuv ? null : (kelvin, above ? away : -away);
    }

    private (double Away, bool Above) Distance(double mired)
    {
        var body = Spectrum.Glowing(1e6 / mired).Tristimulus().Chromaticity;
        var (du, dv) = (U - body.U, V - body.V);
        return (Math.Sqrt((du * du) + (dv * dv)), dv > 0);
    }
}
