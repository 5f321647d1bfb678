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
        // Gaps make a plan longer, so only the faults that close one go through it.
        var effects = new FaultEffect[faults.Length];
        var sound = Simulate(network, faults, [.. Places(faults, bridged: false)], effects, cancel);
        int[] bridged = [.. Places(faults, bridged: true)];
        if (bridged.Length > 0)
        {
            Simulate(network, faults, bridged, effects, cancel);
        }

        return (sound, [.. effects]);
    }

    private static IEnumerable<int> Places(ImmutableArray<CircuitFault> faults, bool bridged) =>
        Enumerable.Range(0, faults.Length).Where(f => faults[f].Bridge is not null == bridged);

    /// <summary>Simulates the faults at some places of the list and writes their effects there.</summary>
    private static FaultEffect Simulate(Network network, ImmutableArray<CircuitFault> faults, int[] places, FaultEffect[] effects, CancellationToken cancel)
    {
        var gaps = places.Select(p => faults[p].Bridge).OfType<ResistorElement>().Select(b => (b.A, b.B)).Distinct().ToList();
        var gapAt = gaps.Select((g, i) => (g, i)).ToDictionary(x => x.g, x => network.Elements.Length + x.i);
        var gapped = new Network(network.NodeCount, [.. network.Elements, .. gaps.Select(g => new ResistorElement(GapName, g.A, g.B, GapOhms))]);
        var sound = OperatingPoint.Solve(gapped);
        if (sound.Status != SolveStatus.Solved)
        {
            throw new InvalidOperationException($"The circuit has no solution at {sound.FailedAt} ({sound.Status}).");
        }

        var plan = SeriesParallel.Of(gapped);
        var reading = new FaultReading(gapped, new LaneSolver(plan, gapped, sound.NodeVolts));
        var groups = (places.Length + LaneValues.Lanes - 1) / LaneValues.Lanes;
        Parallel.For(
            0,
            groups,
            new ParallelOptions { CancellationToken = cancel },
            () => new FaultLanes(gapped, new LaneSolver(plan, gapped, sound.NodeVolts), gapAt),
            (group, _, lanes) =>
            {
                var here = places.AsSpan(group * LaneValues.Lanes, Math.Min(LaneValues.Lanes, places.Length - (group * LaneValues.Lanes)));
                var together = new CircuitFault[here.Length];
                for (var lane = 0; lane < here.Length; lane++)
                {
                    together[lane] = faults[here[lane]];
                }

                lanes.Solve(together);
                var seen = reading.Of(lanes.Solver);
                for (var lane = 0; lane < here.Length; lane++)
                {
                    effects[here[lane]] = seen[lane].Hottest == GapName ? seen[lane] with { Hottest = together[lane].Bridge!.Name } : seen[lane];
                }

                return lanes;
            },
            _ => { });
        return reading.Sound;
    }
}
