using System.Collections.Immutable;

namespace Duskwright.Circuits.Metering;

/// <summary>A meter as makers own it.</summary>
/// <param name="CurrentRanges">Ranges of direct current, A, the smallest first.</param>
/// <param name="VoltageRanges">Ranges of direct voltage, V, the smallest first.</param>
/// <param name="DiodeOpenVolts">Voltage between the open leads of the diode range, V.</param>
/// <param name="DiodeAmps">Current it drives into a short there, A.</param>
public sealed record Meter(ImmutableArray<MeterRange> CurrentRanges, ImmutableArray<MeterRange> VoltageRanges, double DiodeOpenVolts, double DiodeAmps)
{
    /// <summary>A cheap meter of 2000 counts: a fifth of a volt is lost on a current range at full scale. Typical, from memory.</summary>
    public static Meter Usual { get; } = new(
        [
            new(2e-3, 2000, 100, 0.01, 2),
            new(20e-3, 2000, 10, 0.01, 2),
            new(0.2, 2000, 1.2, 0.015, 2),
            new(10, 1000, 0.03, 0.03, 2),
        ],
        [new(0.2, 2000, 1e6, 0.005, 2), new(2, 2000, 1e6, 0.005, 2), new(20, 2000, 1e6, 0.005, 2), new(200, 2000, 1e6, 0.005, 2)],
        2.8,
        1e-3);

    /// <summary>The smallest range that shows a value.</summary>
    /// <param name="ranges">Ranges, the smallest first.</param>
    /// <param name="value">V or A.</param>
    /// <returns>That range, or the largest where none reaches.</returns>
    public static MeterRange Fitting(ImmutableArray<MeterRange> ranges, double value) =>
        ranges.FirstOrDefault(r => Math.Abs(value) <= r.FullScale) ?? ranges[^1];
}
