using System.Collections.Immutable;

namespace Duskwright.Light.Colour;

/// <summary>A colour without its luminance, CIE 1931.</summary>
/// <param name="X">x.</param>
/// <param name="Y">y, more than zero.</param>
public readonly record struct Chromaticity(double X, double Y)
{
    // Farther than this from the glowing bodies a colour temperature means nothing (CIE 15).
    private const double FarthestDuv = 0.05;

    // Glowing bodies from 25 000 K (40 mired) to 1000 K (1000 mired).
    private const int LeastMired = 40;
    private const int MiredStep = 2;
    private static readonly ImmutableArray<Chromaticity> Bodies = [.. Enumerable.Range(0, 481).Select(i => Spectrum.Glowing(1e6 / (LeastMired + (MiredStep * i))).Tristimulus().Chromaticity)];

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
        var nearest = 1;
        for (var i = 1; i < Bodies.Length - 1; i++)
        {
            if (Square(Bodies[i]) < Square(Bodies[nearest]))
            {
                nearest = i;
            }
        }

        // The square of the distance is a parabola round its least.
        var (before, at, after) = (Square(Bodies[nearest - 1]), Square(Bodies[nearest]), Square(Bodies[nearest + 1]));
        var shift = Math.Clamp((before - after) / (2 * (before - (2 * at) + after)), -1, 1);
        var kelvin = 1e6 / (LeastMired + (MiredStep * (nearest + shift)));
        var body = Spectrum.Glowing(kelvin).Tristimulus().Chromaticity;
        var away = Math.Sqrt(Square(body));
        return away > FarthestDuv ? null : (kelvin, V > body.V ? away : -away);
    }

    private double Square(Chromaticity other)
    {
        var (du, dv) = (U - other.U, V - other.V);
        return (du * du) + (dv * dv);
    }
}
