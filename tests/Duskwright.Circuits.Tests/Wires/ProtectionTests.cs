using System.Collections.Immutable;
using Duskwright.Circuits.Supplies;
using Duskwright.Circuits.Tests.Supplies;
using Duskwright.Circuits.Wires;

namespace Duskwright.Circuits.Tests.Wires;

public sealed class ProtectionTests
{
    private const double HairMetres = 0.1e-3;

    /// <summary>Source: electrical table of resettable fuses, tests/Reference/ptc-resettable-fuse.csv.</summary>
    private static readonly ImmutableArray<FuseRange> Fuses =
    [
        .. ReferenceRows.Of("ptc-resettable-fuse.csv").Select(r => new FuseRange(
            $"{r["hold_current_a"]} A", r.Number("hold_current_a"), r.Number("trip_current_a"), r.Number("resistance_min_ohm"), r.Number("resistance_max_after_trip_ohm"), r.Number("max_voltage_v"))),
    ];

    // Source: D. C. Kulshreshtha, Basic Electrical Engineering, example 4.9, p. 115, tests/Reference/worked-examples.csv BAT-20: eight cells of 1.5 V
    // and 0.75 Ω can give 6 W, into a load as large as their resistance. The sweep steps by an eighth, which misses the top by 0.4 % at most.
    [Fact]
    public void The_hottest_spot_takes_the_available_power_where_it_matches_the_rest()
    {
        var published = ReferenceRows.Of("worked-examples.csv").Single(r => r["example_id"] == "BAT-20").Number("expected_value");
        var spot = Protection.Judge(new ProtectionQuestion([new ShortSource("cells", 12, 6)], 0, 0, 1e-3, 20, 0.1), null).HotSpot;
        Assert.Equal(published, spot.ShortWatts, 0.004 * published);
        Assert.Equal(6, spot.ShortOhms, 0.06 * 6);
    }

    // Source: Lessons in Electric Circuits (T. R. Kuphaldt), vol. I, chapter 11: 10 V behind 0.2 Ω; printed 50 A. The least short counts 0.01 Ω.
    [Fact]
    public void A_dead_short_carries_the_open_voltage_over_the_source_resistance() =>
        Assert.Equal(50, Protection.Judge(new ProtectionQuestion([new ShortSource("cells", 10, 0.19)], 0, 0, 0.5e-3, 20, 0.1), null).Hottest.Amps, 0.5);

    // Ohm's law and the maximum power theorem: the wire is hottest just below trip, the spot where it matches the rest or is as near as the fuse lets it be.
    [Fact]
    public void The_sweep_finds_what_the_closed_form_says()
    {
        foreach (var fuse in Fuses.Where(f => f.HoldAmps <= 0.9))
        {
            var around = 1.1 + 0.2 + fuse.LeastOhms;
            var leastBorne = (4.85 / fuse.TripAmps) - around;
            var matched = Math.Max(around, leastBorne);
            var verdict = Protection.Judge(Question(new ShortSource("fresh", 4.85, 1.1), 0.2, 0.2, HairMetres), fuse);
            Assert.Equal(fuse.TripAmps, verdict.Hottest.Amps, 1e-6);
            Assert.Equal(leastBorne, verdict.Hottest.ShortOhms, 1e-6);
            var watts = Math.Pow(4.85 / (around + matched), 2) * matched;
            Assert.Equal(watts, verdict.HotSpot.ShortWatts, 0.01 * watts);
        }
    }

    [Fact]
    public void At_the_end_of_a_long_thin_wire_no_fuse_opens()
    {
        var verdict = Protection.Judge(Question(new ShortSource("fresh", 4.8, 0.9), 5.3, 5.3, HairMetres), new FuseRange("1 A", 0.5, 1, 0.41, 1.17));
        Assert.False(verdict.OpensEverywhere);
        Assert.Equal(4.8 / (0.9 + 5.3 + 0.41 + 0.01), verdict.Hottest.Amps, 1e-9);
    }

    [Fact]
    public void No_short_that_lasts_carries_more_than_the_trip_current() =>
        Assert.All(Fuses, f => Assert.All(Protection.Sweep(ThreeAa(HairMetres, 3), f), s => Assert.True(s.Opens || s.Amps <= f.TripAmps)));

    // Source: common practice, no source: three AA drive about 4 to 5 A through a short at the bank, which chars hair wire in card.
    [Fact]
    public void Hair_wire_without_a_fuse_scorches_card_and_a_small_resettable_fuse_prevents_it()
    {
        var question = ThreeAa(HairMetres, 2);
        var bare = Protection.Judge(question, null);
        Assert.InRange(bare.Hottest.Amps, 3.5, 5.5);
        Assert.True(bare.Scorches);
        Assert.False(bare.OpensEverywhere);
        var chosen = Protection.Choose(question, Fuses)!;
        Assert.False(chosen.Scorches);
        Assert.InRange(chosen.Fuse!.HoldAmps, 2 * question.LoadAmps, 0.3);
        Assert.True(chosen.HotSpot.ShortWatts > 0.3);
    }

    [Fact]
    public void On_a_long_hair_wire_with_aged_cells_no_fuse_is_sure_to_open()
    {
        Assert.Null(Protection.Choose(ThreeAa(HairMetres, 25), Fuses));
        Assert.Contains(Fuses, f => Protection.Judge(ThreeAa(HairMetres, 25), f) is { CarriesLoad: true, OpensEverywhere: false });
    }

    [Fact]
    public void An_adaptor_that_limits_its_current_never_opens_a_larger_fuse()
    {
        var adaptor = Question(new ShortSource("adaptor", 5, 0.15, 1), 0.1, 0.3, 0.5e-3);
        Assert.All(Fuses.Where(f => f.TripAmps >= 1), f => Assert.False(Protection.Judge(adaptor, f).OpensEverywhere));
        Assert.True(Protection.Judge(adaptor, Fuses.Single(f => f.HoldAmps == 0.2)).OpensEverywhere);
    }

    [Fact]
    public void A_fuse_for_six_volts_is_not_chosen_on_nine()
    {
        var nine = Question(new ShortSource("block", 9.5, 0.5), 0.1, 0.2, 1e-3) with { LoadAmps = 0.35 };
        Assert.True(Protection.Choose(nine, Fuses)!.Fuse!.MostVolts >= 9.5);
    }

    private static ProtectionQuestion Question(ShortSource source, double nearOhms, double farOhms, double diameter) => new([source], nearOhms, farOhms, diameter, 20, 0.05);

    private static ProtectionQuestion ThreeAa(double diameter, double farMetres)
    {
        var pack = new PackLaw(UsualCells.Of("LR6"), 3, 1, 0.15);
        ShortSource At(string name, double left) => new(name, pack.OpenVolts(CellState.At(pack.Cell, left)), pack.Ohms(CellState.At(pack.Cell, left)));
        return new ProtectionQuestion([At("fresh", 1), At("aged", 0.3)], 0.1, 0.1 + (2 * farMetres * Copper.OhmsPerMetre(diameter)), diameter, 20, 0.05);
    }
}
