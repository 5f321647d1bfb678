using System.Collections.Immutable;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Faulting;

/// <summary>Simulates single faults of a circuit, side by side in the vector unit and on all cores.</summary>
/// <remarks>
/// A fault changes numbers and not the structure: an open part is a very large resistance, a bridge is a gap that closes. So all faults use
/// one plan and start from the sound circuit. Only a pair swapped inside a loop is taken apart anew.
/// </remarks>
public static class FaultSweep
{
    // A gap that nothing bridges: at 12 V it passes 12 femtoamperes, a thousandth of what a dark lamp leaks.
    internal const double GapOhms = 1e15;
    private const string GapName = "gap";

    /// <summary>Simulates faults, one at a time.</summary>
    /// <param name="network">The sound circuit.</param>
    /// <param name="faults">The faults.</param>
    /// <param name="cancel">Ends the work early.</param>
    /// <returns>The sound circuit, and one effect a fault in the order given.</returns>
    /// <exception cref="InvalidOperationException">The sound circuit has no solution; the message names the element.</exception>
    public static (FaultEffect Sound, ImmutableArray<FaultEffect> Faulty) Of(Network network, ImmutableArray<CircuitFault> faults, CancellationToken cancel = default)
    {
        var gaps = faults.Where(f => f.Bridge is not null).Select(f => (f.Bridge!.A, f.Bridge.B)).Distinct().ToList();
        var gapAt = gaps.Select((g, i) => (g, i)).ToDictionary(x => x.g, x => network.Elements.Length + x.i);
        var bridged = new Network(network.NodeCount, [.. network.Elements, .. gaps.Select(g => new ResistorElement(GapName, g.A, g.B, GapOhms))]);
        var sound = OperatingPoint.Solve(bridged);
        if (sound.Status != SolveStatus.Solved)
        {
            throw new InvalidOperationException($"The circuit has no solution at {sound.FailedAt} ({sound.Status}).");
        }

        var plan = SeriesParallel.Of(bridged);
        var reading = new FaultReading(bridged, new LaneSolver(plan, bridged, sound.NodeVolts));
        var effects = new FaultEffect[faults.Length];
        var groups = (faults.Length + LaneValues.Lanes - 1) / LaneValues.Lanes;
        Parallel.For(
            0,
            groups,
            new ParallelOptions { CancellationToken = cancel },
            () => new FaultLanes(bridged, new LaneSolver(plan, bridged, sound.NodeVolts), gapAt),
            (group, _, lanes) =>
            {
                var first = group * LaneValues.Lanes;
                var here = faults.AsSpan().Slice(first, Math.Min(LaneValues.Lanes, faults.Length - first));
                lanes.Solve(here);
                var seen = reading.Of(lanes.Solver);
                for (var lane = 0; lane < here.Length; lane++)
                {
                    effects[first + lane] = seen[lane].Hottest == GapName ? seen[lane] with { Hottest = here[lane].Bridge!.Name } : seen[lane];
                }

                return lanes;
            },
            _ => { });
        return (reading.Sound, [.. effects]);
    }
}
