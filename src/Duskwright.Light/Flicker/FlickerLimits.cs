namespace Duskwright.Light.Flicker;

/// <summary>How much a general light may flicker, by IEEE 1789 (clause 8.1.1, read second-hand).</summary>
/// <remarks>Candle flicker is below 90 Hz and deep by design: it always exceeds these limits, which is why its rate and lit area decide (<see cref="FlashLimits"/>).</remarks>
public static class FlickerLimits
{
    /// <summary>Modulation up to which the risk is low.</summary>
    /// <param name="hertz">Changes a second, more than 0.</param>
    /// <returns>Percent, at most 100.</returns>
    public static double LowRiskPercent(double hertz) => Math.Min(100, (hertz < Slow ? 0.025 : 0.08) * hertz);

    /// <summary>Modulation up to which nothing is observed.</summary>
    /// <param name="hertz">Changes a second, more than 0.</param>
    /// <returns>Percent, at most 100.</returns>
    public static double NoEffectPercent(double hertz) => Math.Min(100, (hertz < Slow ? 0.01 : 0.0333) * hertz);

    /// <summary>Where a light stands.</summary>
    /// <param name="hertz">Changes a second, more than 0.</param>
    /// <param name="modulationPercent">(most − least)/(most + least), percent.</param>
    /// <returns>The class.</returns>
    public static FlickerRisk Of(double hertz, double modulationPercent) =>
        modulationPercent < NoEffectPercent(hertz) ? FlickerRisk.NoEffect : modulationPercent < LowRiskPercent(hertz) ? FlickerRisk.Low : FlickerRisk.AboveLow;

    // Hz.
    private const double Slow = 90;
}

/// <summary>Classes of flicker.</summary>
public enum FlickerRisk
{
    /// <summary>Nothing is observed.</summary>
    NoEffect,

    /// <summary>Low risk.</summary>
    Low,

    /// <summary>Above low risk.</summary>
    AboveLow,
}
