using System.Collections.Immutable;
using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Tolerance;

/// <summary>How much flickering lamps make the other lamps of their pack flicker, through the resistance they share.</summary>
/// <remarks>
/// The states are solved one by one: all dark, all lit, and each lit alone. Flickering lamps are independent of one another, so the
/// variances of their effects add, each p·(1 − p)·Δ² with p the share of time lit.
/// </remarks>
public static class FlickerDisturbance
{
    /// <summary>Solves the states of a network.</summary>
    /// <param name="network">The network.</param>
    /// <returns>One line a lamp, flickering lamps in their own lit state; empty when no lamp flickers.</returns>
    /// <exception cref="InvalidOperationException">A state has no solution.</exception>
    public static ImmutableArray<DisturbedLamp> Of(Network network)
    {
        var flickering = Places(network, l => l.Law is FlickerLaw);
        if (flickering.Length == 0)
        {
            return [];
        }

        var solver = new NetworkSolver(network);
        var dark = Lights(solver, network, []);
        var lit = Lights(solver, network, flickering);
        var alone = flickering.Select(f => Lights(solver, network, [f])).ToArray();
        return [.. Places(network, _ => true).Select(lamp => Of(network, lamp, flickering, dark, lit, alone))];
    }

    private static DisturbedLamp Of(Network network, int lamp, int[] flickering, double[] dark, double[] lit, double[][] alone)
    {
        var self = Array.IndexOf(flickering, lamp);
        var most = self < 0 ? dark[lamp] : alone[self][lamp];
        var (mean, variance) = (most, 0.0);
        for (var f = 0; f < flickering.Length; f++)
        {
            var share = ((FlickerLaw)((LampElement)network.Elements[flickering[f]]).Law).OnShare;

            // What a neighbour takes from a flickering lamp is seen while that lamp is lit: in step with what it takes from a steady one's volts.
            var step = f == self ? 0 : self < 0 ? alone[f][lamp] - dark[lamp] : (lit[lamp] - most) / (flickering.Length - 1);
            mean += share * step;
            variance += share * (1 - share) * step * step;
        }

        return new DisturbedLamp(lamp, lit[lamp], most, LightnessDifference.Between(lit[lamp], most), mean > 0 ? Math.Sqrt(variance) / mean : 0);
    }

    private static int[] Places(Network network, Func<LampElement, bool> which) =>
        [.. Enumerable.Range(0, network.Elements.Length).Where(i => network.Elements[i] is LampElement lamp && which(lamp))];

    private static double[] Lights(NetworkSolver solver, Network network, int[] litLamps)
    {
        var held = new Network(network.NodeCount, [.. network.Elements.Select((e, i) => e is LampElement { Law: FlickerLaw law } lamp ? lamp with { Law = law.InState(litLamps.Contains(i)) } : e)]);
        var solution = solver.Solve(held);
        return solution.Status == SolveStatus.Solved
            ? [.. held.Elements.Select(e => e is LampElement lamp ? lamp.Law.At(solution.NodeVolts[lamp.A] - solution.NodeVolts[lamp.B], lamp.ResistorOhms).Light : 0)]
            : throw new InvalidOperationException($"The circuit has no solution at {solution.FailedAt} ({solution.Status}).");
    }
}
