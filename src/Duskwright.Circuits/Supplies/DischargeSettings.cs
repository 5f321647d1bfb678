namespace Duskwright.Circuits.Supplies;

/// <summary>How a discharge is run.</summary>
/// <param name="Schedule">When the lamps burn and the cells rest.</param>
/// <param name="MostLitSeconds">Time lit after which to end, s.</param>
/// <param name="Stop">Ends the run after a step of which it says true.</param>
/// <param name="StepShare">The largest share of a pack's charge drawn in one step, above 0 to 1.</param>
public sealed record DischargeSettings(
    DutySchedule Schedule, double MostLitSeconds, Func<DischargeStep, bool>? Stop = null, double StepShare = 0.01)
{
    /// <summary>The same hours every day.</summary>
    /// <param name="litSecondsPerDay">Time the lamps burn each day, above 0 to 86,400 s; the rest of the 24 hours the cells rest.</param>
    /// <param name="mostLitSeconds">Time lit after which to end, s.</param>
    /// <param name="stop">Ends the run after a step of which it says true.</param>
    /// <param name="stepShare">The largest share of a pack's charge drawn in one step, above 0 to 1.</param>
    public DischargeSettings(double litSecondsPerDay, double mostLitSeconds, Func<DischargeStep, bool>? stop = null, double stepShare = 0.01)
        : this(DutySchedule.Daily(litSecondsPerDay), mostLitSeconds, stop, stepShare)
    {
    }

    /// <summary>The largest share of a pack's charge drawn in one step.</summary>
    public double StepShare { get; init; } = StepShare is > 0 and <= 1
        ? StepShare
        : throw new ArgumentOutOfRangeException(nameof(StepShare), StepShare, "A step draws above 0 and at most all of the charge.");

    /// <summary>Whether the run goes on when a cell is dry: with cells one by one, the others then drive current through it.</summary>
    public bool PastDryCells { get; init; }
}
