using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Tests.Solving;

/// <summary>Three hundred and fifty-two seeded towns solved by an independent simulator. Source: ngspice 39.3, shared library, operating point of <see cref="NetList"/>.</summary>
public sealed class ManyNetworksTests
{
    private const int Networks = 352;
    private const int Batch = 32;

    // The simulator gives up on a few; three hundred of all are compared.
    private const int LeastCompared = 28;

    [Theory]
    [MemberData(nameof(Batches))]
    public void An_independent_simulator_finds_the_same_voltages_and_currents_in_any_town(int first)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "The simulator's library is looked for on Linux only.");
        var compared = 0;
        for (var seed = first; seed < first + Batch; seed++)
        {
            var network = RandomNetwork.Of(seed);
            var solution = OperatingPoint.Solve(network);
            Assert.Equal(SolveStatus.Solved, solution.Status);
            var metered = Enumerable.Range(0, network.Elements.Length).Where(i => network.Elements[i] is not ResistorElement).ToList();
            var theirs = Theirs(network, [.. Enumerable.Range(0, network.NodeCount).Select(NetList.Node), .. metered.Select(NetList.Ammeter)]);
            if (theirs is null)
            {
                continue;
            }

            compared++;
            for (var node = 0; node < network.NodeCount; node++)
            {
                Near(theirs[NetList.Node(node)], solution.NodeVolts[node], 1e-6, $"node {node} of town {seed}");
            }

            foreach (var element in metered)
            {
                Near(theirs[NetList.Ammeter(element)], solution.ElementAmps[element], 1e-9, $"{network.Elements[element].Name} ({element}) of town {seed}");
            }
        }

        Assert.InRange(compared, LeastCompared, Batch);
    }

    public static TheoryData<int> Batches() => [.. Enumerable.Range(0, Networks / Batch).Select(b => b * Batch)];

    private static IReadOnlyDictionary<string, double>? Theirs(Network network, string[] names)
    {
        try
        {
            return Ngspice.Volts(NetList.Of(network), names);
        }
        catch (InvalidOperationException given) when (given.Message.Contains("solution failed", StringComparison.Ordinal))
        {
            return null;
        }
    }

    private static void Near(double expected, double actual, double absolute, string where) =>
        Assert.True(Math.Abs(expected - actual) <= absolute + (1e-6 * Math.Abs(expected)), $"{where}: {actual:R} for {expected:R}");
}
