namespace Duskwright.Light.Camera;

/// <summary>Bands across a picture whose rows are exposed one after another while a light pulses.</summary>
public static class Banding
{
    /// <summary>Difference between the lightest and the darkest row over their sum, for a light switched on and off.</summary>
    /// <param name="hertz">Pulses a second.</param>
    /// <param name="onShare">Share of each period that it is on, 0 to 1.</param>
    /// <param name="seconds">Shutter time of a row, s.</param>
    /// <returns>0 for none, to 1; none where the shutter is open for whole periods.</returns>
    /// <remarks>Of t·f periods the whole ones are alike for every row; the rest catches at most the on time and at least what the off time leaves.</remarks>
    public static double Depth(double hertz, double onShare, double seconds)
    {
        var periods = hertz * seconds;
        var whole = Math.Floor(periods + 1e-9);
        var rest = Math.Max(0, periods - whole);
        var most = (whole * onShare) + Math.Min(rest, onShare);
        var least = (whole * onShare) + Math.Max(0, rest - (1 - onShare));
        return most + least > 0 ? (most - least) / (most + least) : 0;
    }
}
