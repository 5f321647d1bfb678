using System.Collections.Immutable;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Faulting;

/// <summary>What one fault does to a circuit.</summary>
/// <param name="Status">Whether to believe it.</param>
/// <param name="FailedAt">The element where the solve failed; none when solved.</param>
/// <param name="LightShares">Light of each lamp, in the order of the lamps among the elements, as a share of what it gives in the sound circuit; 1 for a lamp that gives none there (less than a thousandth of its reference light).</param>
/// <param name="PackAmps">Current that each source delivers, A, in the order of the sources among the elements.</param>
/// <param name="PackVolts">Voltage between the ends of each source, V, in the same order.</param>
/// <param name="Hottest">Name of the wire or resistor that turns most power into heat; a lamp's own resistor goes by the lamp's name.</param>
/// <param name="HottestWatts">That power, W.</param>
public sealed record FaultEffect(
    SolveStatus Status,
    string? FailedAt,
    ImmutableArray<double> LightShares,
    ImmutableArray<double> PackAmps,
    ImmutableArray<double> PackVolts,
    string Hottest,
    double HottestWatts);
