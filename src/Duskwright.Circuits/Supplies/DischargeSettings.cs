namespace Duskwright.Circuits.Supplies;

/// <summary>How a discharge is run.</summary>
/// <param name="LitSecondsPerDay">Time the lamps burn each day, above 0 to 86,400 s; the rest of the 24 hours the cells rest.</param>
/// <param name="MostLitSeconds">Time lit after which to end, s.</param>
/// <param name="Stop">Ends the run after a step of which it says true.</param>
/// <param name="StepShare">The largest share of a pack's charge drawn in one step, above 0 to 1.</param>
public sealed record DischargeSettings(
    double LitSecondsPerDay, double MostLitSeconds, Func<DischargeStep, bool>? Stop = null, double StepShare = 0.01)
{
    /// <summary>Time the lamps burn each day, s.</summary>
    public double LitSecondsPerDay { get; init; } = LitSecondsPerDay is > 0 and <= 86400
        ? LitSecondsPerDay
        : throw new ArgumentOutOfRangeException(nameof(LitSecondsPerDay), LitSecondsPerDay, "Lamps burn above 0 and at most 86400 s a day.");

    /// <summary>The largest share of a pack's charge drawn in one step.</summary>
    public double StepShare { get; init; } = StepShare is > 0 and <= 1
        ? StepShare
        : throw new ArgumentOutOfRangeException(nameof(StepShare), StepShare, "A step draws above 0 and at most all of the charge.");
}
