using Duskwright.Faults.Finding;
using Duskwright.Faults.Signatures;

namespace Duskwright.Faults.Tests.Finding;

public sealed class FaultFinderTests
{
    private static readonly SignatureTable Table = SignatureTable.Of(Hamlet.Of(820, 5, 3));

    // Source: common practice, no source: one of five lamps out is that lamp's own branch; open joint > short > reversed > dead LED.
    [Fact]
    public void One_lamp_out_among_lit_ones_is_its_own_branch_an_open_joint_first()
    {
        var ranking = FaultFinder.Rank(Table, Seen(dark: "A2"), meter: false);
        Assert.Equal(
            [FaultKind.LampJointOpen, FaultKind.LampShorted, FaultKind.LampReversed, FaultKind.LampDead],
            ranking.Faults.Take(4).Select(f => f.Fault.Kind));
        Assert.All(ranking.Faults.Take(4), f => Assert.Equal("A2", f.Fault.Place));
        Assert.All(ranking.Faults.Skip(4), f => Assert.True(f.Share < 0.01));
        Assert.Null(ranking.Next);
    }

    // Source: common practice, no source: volts and no current mean open inside, more current means a short.
    [Theory]
    [InlineData(-2.3e-3, FaultKind.LampJointOpen)]
    [InlineData(+3.6e-3, FaultKind.LampShorted)]
    public void A_reading_tells_an_open_lamp_from_a_shorted_one(double change, FaultKind kind)
    {
        var amps = Table.Healthy.PackAmps[0] + change;
        var ranking = FaultFinder.Rank(Table, Seen(dark: "A2").Read(0, new AmpsReading(amps - 0.5e-3, amps + 0.5e-3)), meter: true);
        Assert.Equal(kind, ranking.Faults[0].Fault.Kind);
        Assert.True(ranking.Faults[0].Explains);
    }

    // Source: common practice, no source: one house out is its pair.
    [Fact]
    public void One_house_out_is_its_pair()
    {
        var first = FaultFinder.Rank(Table, Seen(dark: "B1 B2 B3"), meter: false).Faults[0];
        Assert.Equal((FaultKind.PairOpen, "pair of B"), (first.Fault.Kind, first.Fault.Place));
    }

    // Source: common practice, no source: the pack is hot and nothing lights: a short.
    [Fact]
    public void All_out_and_amperes_flowing_is_a_shorted_pair()
    {
        var ranking = FaultFinder.Rank(Table, Seen(dark: "A1 A2 A3 A4 A5 B1 B2 B3").Read(0, new AmpsReading(2.0, 2.8)), meter: true);
        Assert.All(ranking.Faults.Take(2), f => Assert.Equal(FaultKind.PairShorted, f.Fault.Kind));
        Assert.True(ranking.Faults[0].Share + ranking.Faults[1].Share > 0.95);
    }

    // Ohm's law: a pair of 0.5 Ω each way, shorted at its end, takes 1 A from a pack whose volts have broken down to 1 V, whatever its
    // cells and the meter's burden are.
    [Fact]
    public void Volts_and_amperes_of_a_pack_that_broke_down_are_those_of_a_shorted_pair()
    {
        var seen = Seen(dark: "A1 A2 A3 A4 A5 B1 B2 B3").Read(0, new VoltsReading(0.99, 1.01)).Read(0, new AmpsReading(0.97, 1.03));
        var ranking = FaultFinder.Rank(Table, seen, meter: true);
        Assert.All(ranking.Faults.Take(2), f => Assert.Equal(FaultKind.PairShorted, f.Fault.Kind));
        Assert.True(ranking.Faults[0].Share + ranking.Faults[1].Share > 0.95);
        Assert.False(FaultFinder.Rank(Table, seen.Read(0, new AmpsReading(0.27, 0.33)), meter: true).Faults[0].Explains);
    }

    // Common practice, no source: less current at the same volts means a lamp out, on tired cells as on fresh ones.
    [Theory]
    [InlineData(4.3)]
    [InlineData(3.9)]
    public void Tired_cells_are_not_taken_for_a_lamp_out_where_volts_are_read_too(double volts)
    {
        var sound = OnVolts(volts, none: true);
        var well = FaultFinder.Rank(Table, Lit(volts, sound), meter: true);
        var less = FaultFinder.Rank(Table, Lit(volts, OnVolts(volts, none: false)), meter: true);
        Assert.True(well.Healthy > 0.5 && well.Healthy > less.Healthy);
    }

    // Kirchhoff's laws for eight lamps alike, solved by halving: each takes the current at which its own volts and its resistor's make up the pack's.
    private static double OnVolts(double volts, bool none)
    {
        var (low, high) = (1e-9, 0.02);
        for (var i = 0; i < 60; i++)
        {
            var amps = (low + high) / 2;
            (low, high) = 2.70 + (0.055 * Math.Log(amps / 1e-3)) + (12 * (amps - 1e-3)) + (820 * amps) < volts ? (amps, high) : (low, amps);
        }

        return (none ? 8 : 7) * low;
    }

    private static Observation Lit(double volts, double amps) =>
        Seen(dark: "none").Read(0, new VoltsReading(volts - 0.03, volts + 0.03)).Read(0, new AmpsReading(amps * 0.98, amps * 1.02));

    [Fact]
    public void After_one_dark_lamp_the_next_look_is_at_its_neighbour_in_the_house()
    {
        var lamp = Array.FindIndex([.. Table.Tagged.Lamps], l => l.Name == "A2");
        var next = FaultFinder.Rank(Table, Observation.Nothing.Saw(lamp, LampLook.Dark), meter: false).Next;
        Assert.NotNull(next);
        Assert.Equal(LookKind.SeeLamp, next.Kind);
        Assert.StartsWith("A", next.Place, StringComparison.Ordinal);
        Assert.InRange(next.Bits, 0.01, Math.Log2(3));
    }

    // All is dark and the pack is pushed into a short. Two pairs may be the one: whichever is read, its answer parts the two, one bit of it by Shannon's entropy less what is spent on the rest.
    [Fact]
    public void When_all_is_dark_the_ohms_of_one_pair_tell_which_of_two_houses_is_shorted()
    {
        var even = SignatureTable.Of(Hamlet.Of(820, 4, 4));
        var dark = even.Tagged.Lamps.Select((_, i) => i).Aggregate(Observation.Nothing, (seen, i) => seen.Saw(i, LampLook.Dark)).Read(0, new AmpsReading(1.2, 3.5));
        var pairs = new[] { "A", "B" }.Select((name, h) => PairToRead.Of($"pair of {name}", Alone(even.Tagged, h))).ToList();
        Assert.Null(FaultFinder.Rank(even, dark, meter: false).Next);
        var ranking = FaultFinder.Rank(even, dark, meter: false, pairs: pairs);
        Assert.Equal(LookKind.ReadPairOhms, ranking.Next?.Kind);
        Assert.InRange(ranking.Next!.Bits, 0.9, 1.01);
        Assert.Null(ranking.NextByEye);
    }

    private static Tagging.TaggedNetwork Alone(Tagging.TaggedNetwork all, int house) => all with
    {
        Pairs = [all.Pairs[house]],
        Network = new Circuits.Networks.Network(all.Network.NodeCount, [.. all.Network.Elements.Select((e, i) => e is Circuits.Networks.ResistorElement wire && !all.Pairs[house].Wires.Contains(i) ? wire with { Ohms = 1e9 } : e)]),
    };

    [Fact]
    public void A_reading_is_asked_for_only_with_a_meter()
    {
        Assert.Equal(LookKind.ReadPack, FaultFinder.Rank(Table, Seen(dark: "A2"), meter: true).Next?.Kind);
        Assert.Null(FaultFinder.Rank(Table, Seen(dark: "A2"), meter: false).Next);
    }

    [Fact]
    public void Lamps_out_in_two_houses_are_no_single_fault()
    {
        Assert.True(FaultFinder.Rank(Table, Seen(dark: "A2"), meter: false).OneFaultExplains);
        Assert.False(FaultFinder.Rank(Table, Seen(dark: "A2 B1"), meter: false).OneFaultExplains);
    }

    [Fact]
    public void Shares_add_up_to_one_and_fall() =>
        Assert.All(
            [Observation.Nothing, Seen(dark: "A2"), Seen(dark: "A2 B1")],
            seen =>
            {
                var shares = FaultFinder.Rank(Table, seen, meter: false).Faults.Select(f => f.Share).ToList();
                Assert.Equal(1, shares.Sum(), 1e-9);
                Assert.Equal(shares.OrderDescending(), shares);
            });

    [Fact]
    public void The_fault_that_was_made_explains_what_it_shows_and_none_that_shows_otherwise_ranks_above_it() =>
        Gen.Select(Hamlet.Any, Gen.Int[0, 10_000]).Sample((town, pick) =>
        {
            var table = SignatureTable.Of(town);
            var made = table.Rows[pick % table.Rows.Length];
            var seen = Enumerable.Range(0, town.Lamps.Length).Aggregate(Observation.Nothing, (s, lamp) => s.Saw(lamp, made.Signature.Look(lamp)));
            var ranking = FaultFinder.Rank(table, seen, meter: false);
            var found = ranking.Faults.Single(f => f.Fault == made.Fault);
            return found.Explains && ranking.Faults.Where(f => f.Share > found.Share).All(f => f.Explains || f.Fault.Kind != made.Fault.Kind);
        });

    private static Observation Seen(string dark)
    {
        var names = dark.Split(' ');
        return Table.Tagged.Lamps.Select((l, i) => (l.Name, i)).Aggregate(Observation.Nothing, (s, l) => s.Saw(l.i, names.Contains(l.Name) ? LampLook.Dark : LampLook.Lit));
    }
}
