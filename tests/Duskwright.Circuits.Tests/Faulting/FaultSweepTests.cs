using System.Collections.Immutable;
using Duskwright.Circuits.Faulting;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Circuits.Supplies;
using Duskwright.Circuits.Tests.Solving;
using Duskwright.Circuits.Tests.Supplies;

namespace Duskwright.Circuits.Tests.Faulting;

/// <summary>The sweep against the whole circuit taken apart and solved anew for every fault.</summary>
public sealed class FaultSweepTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    // Trees (even seeds) and meshes (odd) of 5 to 500 lamps, one to three supplies, lamps of every kind.
    [Fact]
    public void Every_fault_of_a_town_is_what_the_faulty_town_solved_anew_says()
    {
        var kinds = new HashSet<CircuitFaultKind>();
        for (var seed = 0; seed < 12; seed++)
        {
            var network = RandomNetwork.Of(seed);
            var faults = FaultList.Of(network, Pairs(network), Packs(network));
            var (sound, faulty) = FaultSweep.Of(network, faults, Cancel);
            var lights = Lights(network, OperatingPoint.Solve(network));
            Assert.All(sound.LightShares, share => Assert.Equal(1, share));
            for (var f = 0; f < faults.Length; f++)
            {
                Same(faults[f].In(network), faulty[f], lights, $"{faults[f].Kind} of {faults[f].Place} ({f}), town {seed}");
                kinds.Add(faults[f].Kind);
            }
        }

        Assert.Equal(Enum.GetValues<CircuitFaultKind>().Length, kinds.Count);
    }

    [Fact]
    public void A_swapped_pair_is_the_pair_joined_the_other_way()
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var network = RandomNetwork.Of(seed);
            var pairs = Pairs(network);
            var faults = FaultList.Of(network, pairs, []);
            ImmutableArray<CircuitFault> swaps = [.. faults.Where(f => f.Kind == CircuitFaultKind.PairSwapped)];
            var faulty = FaultSweep.Of(network, swaps, Cancel).Faulty;
            Assert.Equal(pairs.Length, swaps.Length);
            for (var p = 0; p < pairs.Length; p++)
            {
                var (plus, minus) = ((ResistorElement)network.Elements[pairs[p].PlusWire], (ResistorElement)network.Elements[pairs[p].MinusWire]);
                var elements = network.Elements.SetItem(pairs[p].PlusWire, plus with { B = minus.A }).SetItem(pairs[p].MinusWire, minus with { A = plus.B });
                var joined = OperatingPoint.Solve(new Network(network.NodeCount, elements));
                Assert.Equal(SolveStatus.Solved, joined.Status);
                var (lights, lit) = (Lights(network, OperatingPoint.Solve(network)), Lights(network, joined));
                Assert.All(Enumerable.Range(0, lit.Length).Where(l => lights[l] > 1e-3), l => Assert.Equal(lit[l] / lights[l], faulty[p].LightShares[l], 2e-5));
                Assert.Equal(joined.ElementAmps[0], faulty[p].PackAmps[0], 1e-8);
            }
        }
    }

    // By hand: a 4.5 V pack of 0.5 Ω; the short has 4.5 V / (0.5 + 0.2 + 0.2 + 0.05) Ω = 4.737 A and each wire of the pair 4.737² × 0.2 = 4.49 W.
    [Fact]
    public void A_shorted_pair_says_what_the_bank_shows_and_what_gets_hot()
    {
        var network = new CircuitSketch().Pack("pack", "plus", "0", 4.5, 0.5).Wire("there", "plus", "far", 0.2).Wire("back", "far minus", "0", 0.2).Lamp("inn", "far", "far minus", UsualLamps.White, 820).Network;
        var effect = FaultSweep.Of(network, [FaultyPart.Bridged("pair", 2, 3)], Cancel).Faulty[0];
        Assert.Equal(4.5 / 0.95, effect.PackAmps[0], 1e-3);
        Assert.Equal(4.5 - (0.5 * 4.5 / 0.95), effect.PackVolts[0], 1e-3);
        Assert.Equal(0.2 * (4.5 / 0.95) * (4.5 / 0.95), effect.HottestWatts, 1e-2);
        Assert.Equal("there", effect.Hottest);
        Assert.True(effect.LightShares[0] < 0.001);
    }

    // By hand: the lamp shorted, its own 820 Ω take (4.5 V − what 0.5 Ω drop)² / 820 = 24.7 mW.
    [Fact]
    public void A_shorted_lamp_heats_its_resistor()
    {
        var network = new CircuitSketch().Pack("pack", "plus", "0", 4.5, 0.5).Lamp("inn", "plus", "0", UsualLamps.White, 820).Lamp("mill", "plus", "0", UsualLamps.White, 820).Network;
        var effect = FaultSweep.Of(network, [FaultyPart.Shorted(network, 2)], Cancel).Faulty[0];
        Assert.Equal("mill", effect.Hottest);
        Assert.Equal(24.7e-3, effect.HottestWatts, 0.1e-3);
    }

    [Fact]
    public void A_nicked_wire_dims_what_it_feeds_and_does_not_darken_it()
    {
        var network = new CircuitSketch()
            .Pack("pack", "plus", "0", 4.5, 0.5)
            .Wire("there", "plus", "far", 0.2)
            .Lamp("inn 1", "far", "0", UsualLamps.White, 820)
            .Lamp("inn 2", "far", "0", UsualLamps.White, 820)
            .Lamp("mill", "plus", "0", UsualLamps.White, 820)
            .Network;
        var effect = FaultSweep.Of(network, [FaultyPart.Nicked(network, 1, OperatingPoint.Solve(network))], Cancel).Faulty[0];
        Assert.All(effect.LightShares.Take(2), share => Assert.InRange(share, BankView.DarkShare, BankView.DimShare));
        Assert.InRange(effect.LightShares[2], 1, 1.01);
    }

    [Fact]
    public void A_circuit_that_cannot_be_solved_names_its_part()
    {
        var network = new CircuitSketch().Pack("pack", "plus", "0", 4.5, 0.5).Wire("loose tail", "far", "farther", 1).Network;
        Assert.Contains("loose tail", Assert.Throws<InvalidOperationException>(() => FaultSweep.Of(network, [], Cancel)).Message, StringComparison.Ordinal);
        Assert.Contains("loose tail", Assert.Throws<InvalidOperationException>(() => FaultList.Of(network, [], [])).Message, StringComparison.Ordinal);
    }

    /// <summary>The pairs of a drawn town: wires called plus and minus, one after the other.</summary>
    private static ImmutableArray<WirePair> Pairs(Network network) =>
    [
        .. Enumerable.Range(0, network.Elements.Length)
            .Where(i => network.Elements[i].Name == "plus")
            .Select(i => new WirePair($"pair {i}", i, i + 1, network.Elements[i].B, network.Elements[i + 1].A)),
    ];

    private static ImmutableArray<PackOnNetwork> Packs(Network network)
    {
        var law = new PackLaw(UsualCells.Of("LR6"), 3, 2, 0.2);
        return [.. network.Elements.OfType<SourceElement>().Select(s => new PackOnNetwork(s.Name, law, CellState.At(law.Cell, 1)))];
    }

    private static double[] Lights(Network network, Solution solution) =>
        [.. network.Elements.OfType<LampElement>().Select(l => l.Law.At(solution.NodeVolts[l.A] - solution.NodeVolts[l.B], l.ResistorOhms).Light)];

    private static void Same(Network faultyNetwork, FaultEffect effect, double[] soundLights, string where)
    {
        var alone = OperatingPoint.Solve(faultyNetwork);
        Assert.Equal(SolveStatus.Solved, alone.Status);
        Assert.Equal(SolveStatus.Solved, effect.Status);
        void Near(double expected, double actual, double absolute, string what) =>
            Assert.True(Math.Abs(expected - actual) <= absolute + (1e-8 * Math.Abs(expected)), $"{what}, {where}: {actual:R} for {expected:R}");
        var (lamp, source, watts) = (0, 0, 0.0);
        for (var i = 0; i < faultyNetwork.Elements.Length; i++)
        {
            var (element, amps) = (faultyNetwork.Elements[i], alone.ElementAmps[i]);
            var volts = alone.NodeVolts[element.A] - alone.NodeVolts[element.B];
            switch (element)
            {
                case SourceElement:
                    Near(amps, effect.PackAmps[source], 1e-9, "pack current");

                    // Across an open joint of a thousand million ohms the last digits of a current make a microvolt.
                    Near(-volts, effect.PackVolts[source++], 2e-6, "pack voltage");
                    break;
                case LampElement l:
                    var light = l.Law.At(volts, l.ResistorOhms).Light;
                    Near(soundLights[lamp] > 1e-3 ? light / soundLights[lamp] : 1, effect.LightShares[lamp++], 2e-5, "light");
                    watts = Math.Max(watts, amps * amps * l.ResistorOhms);
                    break;
                case ResistorElement r:
                    // A lamp that has become a resistance still has its place among the lamps.
                    lamp += r.Name is "mill" or "hearth" or "bare" or "lantern" or "room" ? 1 : 0;
                    watts = Math.Max(watts, amps * amps * r.Ohms);
                    break;
                default:
                    break;
            }
        }

        Near(watts, effect.HottestWatts, 1e-9, $"heat of {effect.Hottest}");
    }
}
