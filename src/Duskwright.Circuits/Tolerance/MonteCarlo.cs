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
    private const int BlockDraws = 250;

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
        var parts = new DrawnParts(network, spreads);
        var tally = new Tally(lamps, neighbours, probes, draws);
        var start = new NetworkSolver(network).Solve(network).NodeVolts;
        var blocks = (draws + BlockDraws - 1) / BlockDraws;
        Parallel.For(
            0,
            blocks,
            new ParallelOptions { CancellationToken = cancel },
            () => new NetworkSolver(network),
            (block, _, solver) =>
            {
                var first = block * BlockDraws;
                var count = Math.Min(BlockDraws, draws - first);
                var values = new StratifiedDraws(count, parts.Dimensions, HashCode(seed, block));
                for (var i = 0; i < count; i++)
                {
                    var drawn = new Network(network.NodeCount, [.. parts.Of(values, i)]);
                    var solution = solver.Solve(drawn, start.AsSpan());
                    if (solution.Status != SolveStatus.Solved)
                    {
                        throw new InvalidOperationException($"A drawn circuit has no solution at {solution.FailedAt} ({solution.Status}).");
                    }

                    tally.Note(first + i, drawn, solution, lamp => parts.LightShare(values, i, lamp));
                }

                return solver;
            },
            _ => { });
        return tally.Result();
    }

    // Random's own seeding takes neighbouring seeds apart.
    private static int HashCode(int seed, int block) => unchecked((seed * 397) ^ block);

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
