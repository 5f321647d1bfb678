using Duskwright.Circuits.Lamps;

namespace Duskwright.Circuits.Tests.Solving;

/// <summary>Networks solved by an independent simulator. Source: ngspice 39.3, shared library, operating point of the net list written by <see cref="NetList"/>.</summary>
public sealed class NgspiceTests
{
    private static readonly LedLaw ClassicRed = UsualLamps.Card(9.32e-11, 3.73, 0.042, LedLaw.RoomKelvin);

    // A flickering lamp whose lit state has no resistance of its own, which a net list can state without solving for it.
    private static readonly FlickerLaw Flickering = UsualLamps.Flickering with { Lit = UsualLamps.Flickering.Lit with { SeriesOhms = 0 } };

    private static readonly Dictionary<string, CircuitSketch> Sketches = new()
    {
        ["one lamp behind a resistor"] = Pack(4.5, 0.6).Lamp("hut", "plus", "0", UsualLamps.White, 820),
        ["a lamp without any resistor"] = Pack(3.1, 0.4).Lamp("hut", "plus", "0", UsualLamps.White),
        ["amber and white side by side"] = Pack(4.5, 0.6).Lamp("hearth", "plus", "0", UsualLamps.Amber, 1200).Lamp("room", "plus", "0", UsualLamps.White, 820),
        ["amber and white behind one resistor"] = Pack(4.5, 0.6).Wire("shared", "plus", "node", 100).Lamp("hearth", "node", "0", UsualLamps.Amber).Lamp("room", "node", "0", UsualLamps.White),
        ["lamps of a classic card"] = Pack(3, 0.5).Wire("shared", "plus", "node", 47).Lamp("a", "node", "0", ClassicRed).Lamp("b", "node", "0", ClassicRed with { RefVolts = ClassicRed.RefVolts + 0.1 }),
        ["three white lamps in series"] = Pack(12, 1).Lamp("a", "plus", "x", UsualLamps.White, 1800).Lamp("b", "x", "y", UsualLamps.White).Lamp("c", "y", "0", UsualLamps.White),
        ["a reversed lamp among others"] = Pack(4.5, 0.6).Wire("pair", "plus", "far", 5.3).Lamp("right", "far", "0", UsualLamps.White, 820).Lamp("wrong", "0", "far", UsualLamps.White, 820),
        ["a filament lamp on long wires"] = Pack(6, 0.8).Wire("there", "plus", "far", 2).Lamp("mill", "far", "near", UsualLamps.Filament).Wire("back", "near", "0", 2),
        ["a filament lamp that only glimmers"] = Pack(6, 0.8).Lamp("mill", "plus", "0", UsualLamps.Filament, 150),
        ["a flickering hearth beside rooms"] = Pack(4.5, 0.6).Wire("pair", "plus", "far", 3).Lamp("hearth", "far", "0", Flickering, 120).Lamp("room", "far", "0", UsualLamps.White, 820),
        ["a flickering hearth on spent cells"] = Pack(2.05, 2).Lamp("hearth", "plus", "0", Flickering, 20).Lamp("room", "plus", "0", UsualLamps.Amber, 120),
        ["a street of twenty houses on hair wire"] = Street(20, 0.55, ring: false),
        ["a ring street"] = Street(12, 0.55, ring: true),
        ["two packs on one return"] = TwoPacks(4.8, 4.5),
        ["two unequal packs side by side"] = TwoPacks(4.8, 3.6).Wire("tie", "east plus", "west plus", 0.2),
        ["a nicked wire"] = Pack(4.5, 0.6).Wire("nicked", "plus", "far", 150).Lamp("a", "far", "0", UsualLamps.White, 390).Lamp("b", "far", "0", UsualLamps.White, 390),
        ["a shorted pair at the end of a street"] = Street(6, 0.55, ring: false).Wire("short", "p6", "m6", 0.05),
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void An_independent_simulator_finds_the_same_voltages(string name)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "The simulator's library is looked for on Linux only.");
        var sketch = Sketches[name];
        var solved = sketch.Solve();
        var theirs = Ngspice.Volts(NetList.Of(sketch.Network), sketch.Nodes.Values.Select(NetList.Node));
        Assert.All(sketch.Nodes, node =>
        {
            var expected = theirs[NetList.Node(node.Value)];
            Assert.Equal(expected, solved.Solution.NodeVolts[node.Value], 1e-6 + (1e-6 * Math.Abs(expected)));
        });
    }

    public static TheoryData<string> Names() => [.. Sketches.Keys];

    [Fact]
    public void The_simulator_complains_where_a_net_list_is_wrong()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "The simulator's library is looked for on Linux only.");
        Assert.Throws<InvalidOperationException>(() => Ngspice.Volts(["r1 n1 0 10"], ["n2"]));
    }

    private static CircuitSketch Pack(double volts, double ohms) => new CircuitSketch().Pack("pack", "plus", "0", volts, ohms);

    private static CircuitSketch Street(int houses, double pieceOhms, bool ring)
    {
        var street = Pack(4.65, 0.9).Wire("switch", "plus", "p0", 0.2).Wire("return", "m0", "0", 0.05);
        for (var h = 1; h <= houses; h++)
        {
            street.Wire($"there {h}", $"p{h - 1}", $"p{h}", pieceOhms)
                .Wire($"back {h}", $"m{h}", $"m{h - 1}", pieceOhms)
                .Lamp($"room {h}", $"p{h}", $"m{h}", h % 3 == 0 ? UsualLamps.Amber : UsualLamps.White, h % 3 == 0 ? 1200 : 680);
        }

        return ring ? street.Wire("close plus", $"p{houses}", "p0", pieceOhms).Wire("close minus", $"m{houses}", "m0", pieceOhms) : street;
    }

    private static CircuitSketch TwoPacks(double east, double west) => new CircuitSketch()
        .Pack("east", "east plus", "strip", east, 0.6)
        .Pack("west", "west plus", "strip", west, 0.9)
        .Wire("return", "strip", "0", 0.3)
        .Wire("shared minus", "minus", "0", 1.5)
        .Lamp("a", "east plus", "minus", UsualLamps.White, 820)
        .Lamp("b", "east plus", "minus", UsualLamps.Amber, 1200)
        .Lamp("c", "west plus", "minus", UsualLamps.White, 390)
        .Lamp("lantern", "west plus", "minus", UsualLamps.Filament, 10);
}
