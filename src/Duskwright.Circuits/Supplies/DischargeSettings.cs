namespace Duskwright.Circuits.Supplies;

/// <summary>How a discharge is run.</summary>
/// <param name="LitSecondsPerDay">Time the lamps burn each day, s; the rest of the 24 hours the cells rest.</param>
/// <param name="MostLitSeconds">Time lit after which to end, s.</param>
/// <param name="Stop">Ends the run after a step of which it says true.</param>
/// <param name="StepShare">The largest share of a pack's charge drawn in one step.</param>
public sealed record DischargeSettings(
    double LitSecondsPerDay, double MostLitSeconds, Func<DischargeStep, bool>? Stop = null, double StepShare = 0.01);
