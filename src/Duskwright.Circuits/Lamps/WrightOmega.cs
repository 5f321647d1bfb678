namespace Duskwright.Circuits.Lamps;

/// <summary>Wright's omega function of a real number: the w with w + ln w = z (Corless and Jeffrey, 2002).</summary>
internal static class WrightOmega
{
    internal static double Of(double z)
    {
        // Below e^-40 the second term of the series w = e^z − e^2z lies under the last digit.
        if (z < -40)
        {
            return Math.Exp(z);
        }

        var w = z < 1 ? Math.Exp(z - Math.Exp(Math.Min(z, 0)) * 0.5) : z - Math.Log(z);

        // Fritsch, Shafer and Crowley (1973): each turn has fourth order, so three turns reach the last digit from a start within 60 %.
        for (var turn = 0; turn < 4; turn++)
        {
            var residual = z - w - Math.Log(w);
            var wp1 = 1 + w;
            var q = 2 * wp1 * (wp1 + (2.0 / 3.0 * residual));
            var step = residual / wp1 * (q - residual) / (q - (2 * residual));
            w *= 1 + step;
            if (Math.Abs(step) < 1e-16)
            {
                break;
            }
        }

        return w;
    }
}
