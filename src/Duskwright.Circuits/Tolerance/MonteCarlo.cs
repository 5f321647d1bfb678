using System.Collections.Immutable;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Tolerance;

/// <summary>A circuit built again and again from parts as they are sold.</summary>
/// <remarks>
/// Blocks of draws are solved side by side, each with its own seed, so the result does not depend on how many cores there are.
/// </remarks>
public static class MonteCarlo
{
    // A whole number of vectors of any width.
    private const int BlockDraws = 256;

    /// <summary>Draws and solves circuits.</summary>
    /// <param name="network">The circuit as planned.</param>
    /// <param name="spreads">How its parts spread.</param>
    /// <param name="neighbours">Lamps seen together.</param>
    /// <param name="probes">Test points.</param>
    /// <param name="draws">Circuits to draw, 1 or more.</param>
    /// <param name="seed">The same seed gives the same result.</param>
    /// <param name="cancel">Ends the work early.</param>
    /// <returns>Ranges and probabilities.</returns>
    /// <exception cref="ArgumentException">A group or probe names a part that is not there, or an unknown part cannot be what it may be.</exception>
    /// <exception cref="InvalidOperationException">A drawn circuit has no solution; the message names the element.</exception>
    public static ToleranceResult Run(
        Network network, Spreads spreads, ImmutableArray<Neighbours> neighbours, ImmutableArray<Probe> probes, int draws, int seed, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        Check(network, neighbours, probes);
        var lamps = Enumerable.Range(0, network.Elements.Length).Where(i => network.Elements[i] is LampElement).ToArray();
        var parts = new DrawnParts(network, spreads, neighbours.SelectMany(n => n.Lamps));
        var tally = new Tally(lamps, neighbours, probes, draws);
        var planned = OperatingPoint.Solve(network);
        if (planned.Status != SolveStatus.Solved)
        {
            throw new InvalidOperationException($"The circuit has no solution at {planned.FailedAt} ({planned.Status}).");
        }

        var plan = SeriesParallel.Of(network, Kinds(network, spreads.Unknowns));
        var blocks = (draws + BlockDraws - 1) / BlockDraws;
        Parallel.For(
            0,
            blocks,
            new ParallelOptions { CancellationToken = cancel },
            () => new LaneSolver(plan, network, planned.NodeVolts),
            (block, _, solver) =>
            {
                var first = block * BlockDraws;
                var count = Math.Min(BlockDraws, draws - first);
                var values = new StratifiedDraws(count, parts.Dimensions, Seed(seed, block));
                for (var group = 0; group * LaneValues.Lanes < count; group++)
                {
                    parts.Fill(solver.Values, values, group);
                    solver.Solve(lane => new Network(network.NodeCount, [.. parts.Of(values, (group * LaneValues.Lanes) + lane)]));
                    var failed = Array.FindIndex(solver.Status, s => s != SolveStatus.Solved);
                    if (failed >= 0)
                    {
                        throw new InvalidOperationException($"A drawn circuit has no solution at {solver.FailedAt[failed]} ({solver.Status[failed]}).");
                    }

                    tally.Note(first + (group * LaneValues.Lanes), solver, lamp => parts.LightShares(values, group, lamp));
                }

                return solver;
            },
            _ => { });
        return tally.Result();
    }

    // The generator mixes neighbouring seeds apart.
    private static ulong Seed(int seed, int block) => ((ulong)(uint)seed << 32) | (uint)block;

    // Where an unknown part may be of another kind than the planned one, the place takes any kind.
    private static PartKind[] Kinds(Network network, ImmutableArray<UnknownPart> unknowns)
    {
        PartKind[] kinds = [.. network.Elements.Select(PartKinds.Of)];
        foreach (var unknown in unknowns.Where(u => !u.CouldBe.All(e => PartKinds.MayStandAt(e, kinds[u.Element]))))
        {
            kinds[unknown.Element] = PartKind.Other;
        }

        return kinds;
    }

    private static void Check(Network network, ImmutableArray<Neighbours> neighbours, ImmutableArray<Probe> probes)
    {
        foreach (var group in neighbours)
        {
            if (group.Lamps.Length < 2 || group.Lamps.Any(l => l < 0 || l >= network.Elements.Length || network.Elements[l] is not LampElement))
            {
                throw new ArgumentException($"{group.Name} is not a group of two or more lamps of the network.", nameof(neighbours));
            }
        }

        foreach (var probe in probes)
        {
            if (probe.Element is { } element ? element < 0 || element >= network.Elements.Length : probe.Plus < 0 || probe.Plus >= network.NodeCount || probe.Minus < 0 || probe.Minus >= network.NodeCount)
            {
                throw new ArgumentException($"{probe.Name} is read at a part or node that the network does not have.", nameof(probes));
            }
        }
    }
}
