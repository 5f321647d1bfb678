namespace Duskwright.Faults.Testing;

/// <summary>How long to watch flickering lamps until each has been seen both lit and dark.</summary>
public static class FlickerWatch
{
    // How often in a hundred watches a sound lamp may go unseen.
    private const double MissedShare = 0.01;

    /// <summary>The time to watch.</summary>
    /// <param name="lamps">Flickering lamps, 1 or more.</param>
    /// <param name="onShare">Share of the time that each is lit, above 0 and below 1.</param>
    /// <param name="changesPerSecond">How often each driver draws its state anew, 1/s, more than zero.</param>
    /// <returns>
    /// Seconds after which, in all but one watch of a hundred, every sound lamp has been seen in both states:
    /// (1 − p)^k for k independent draws of a state of share p (geometric law), the rarer state counting, shared among the lamps (Boole).
    /// </returns>
    public static double Seconds(int lamps, double onShare, double changesPerSecond)
    {
        var rarer = Math.Min(onShare, 1 - onShare);
        return Math.Log(MissedShare / lamps) / Math.Log(1 - rarer) / changesPerSecond;
    }

    /// <summary>How far the share of lit time seen in a watch lies from the true one.</summary>
    /// <param name="onShare">The true share.</param>
    /// <param name="changesPerSecond">How often the driver draws its state anew, 1/s.</param>
    /// <param name="seconds">Seconds watched.</param>
    /// <returns>Standard deviation, √(p(1 − p)/k) of k independent draws.</returns>
    public static double ShareDeviation(double onShare, double changesPerSecond, double seconds) =>
        Math.Sqrt(onShare * (1 - onShare) / Math.Max(1, changesPerSecond * seconds));
}
