using System.Numerics;

namespace Duskwright.Circuits.Lamps;

/// <summary>Wright's omega function of a real number: the w with w + ln w = z (Corless and Jeffrey, 2002).</summary>
/// <remarks>
/// Each turn is the step of Fritsch, Shafer and Crowley (Communications of the ACM 16 (1973) 123), of fourth order: a relative step of
/// a hundred-thousandth leaves an error below the last digit, and from a start within 60 % two or three turns suffice.
/// </remarks>
internal static class WrightOmega
{
    // Below e^-40 the second term of the series w = e^z − e^2z lies under the last digit.
    private const double SeriesBelow = -40;

    // At e^-700 the exponential is still a normal number, so the logarithm gives z back.
    private const double Least = -700;
    private const double LastStep = 1e-5;
    private const int MostTurns = 6;

    internal static double Of(double z)
    {
        if (z < SeriesBelow)
        {
            return Math.Exp(z);
        }

        var w = z < 1 ? Math.Exp(z - Math.Exp(Math.Min(z, 0)) * 0.5) : z - Math.Log(z);
        for (var turn = 0; turn < MostTurns; turn++)
        {
            var residual = z - w - Math.Log(w);
            var wp1 = 1 + w;
            var q = 2 * wp1 * (wp1 + (2.0 / 3.0 * residual));
            var step = residual / wp1 * (q - residual) / (q - (2 * residual));
            w *= 1 + step;
            if (Math.Abs(step) < LastStep)
            {
                break;
            }
        }

        return w;
    }

    /// <summary>As many at a time as the vector unit holds.</summary>
    internal static Vector<double> Of(Vector<double> z)
    {
        z = Vector.Max(z, new Vector<double>(Least));
        var bright = z - Vector.Log(Vector.Max(z, Vector<double>.One));
        var start = Vector.GreaterThanOrEqualAll(z, Vector<double>.One)
            ? bright
            : Vector.ConditionalSelect(
                Vector.LessThan(z, Vector<double>.One),
                Vector.Exp(z - (0.5 * Vector.Exp(Vector.Min(z, Vector<double>.Zero)))),
                bright);
        return Refined(start, z);
    }

    /// <summary>The same where its value at a point nearby is known.</summary>
    /// <remarks>A step along the tangent, where it stays above a third of w, is a start nearer than the general one.</remarks>
    internal static Vector<double> Followed(Vector<double> w, Vector<double> from, Vector<double> to)
    {
        var ahead = w + (w / (Vector<double>.One + w) * (to - from));
        return Vector.GreaterThanAll(ahead, w * 0.3) && Vector.LessThanAll(ahead, w * 3) ? Refined(ahead, to) : Of(to);
    }

    private static Vector<double> Refined(Vector<double> w, Vector<double> z)
    {
        z = Vector.Max(z, new Vector<double>(Least));
        for (var turn = 0; turn < MostTurns; turn++)
        {
            var residual = z - w - Vector.Log(w);
            var wp1 = Vector<double>.One + w;
            var q = 2 * wp1 * (wp1 + ((2.0 / 3.0) * residual));
            var step = residual * (q - residual) / (wp1 * (q - (2 * residual)));
            w += w * step;
            if (Vector.LessThanAll(Vector.Abs(step), new Vector<double>(LastStep)))
            {
                break;
            }
        }

        return w;
    }
}
