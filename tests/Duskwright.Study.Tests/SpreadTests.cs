using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Results;

namespace Duskwright.Study.Tests;

public sealed class SpreadTests
{
    private static readonly TownStudy Saltmarrow = TownStudy.Of(Demo.Saltmarrow);

    // Common practice, no source: a resistor at each lamp keeps lamps of one bag alike; without, one takes the others' share.
    [Fact]
    public void Lamps_without_resistors_hog_and_lamps_with_them_share()
    {
        var bare = Street(ResistorChoice.None).Kinds.Single();
        var held = Street(ResistorChoice.Of(Resistance.FromOhms(820))).Kinds.Single();
        Assert.True(bare.Greediest.Value - 1 > 1.5 * (held.Greediest.Value - 1));
        Assert.True(bare.PairDiffers.Value > held.PairDiffers.Value);
        Assert.Equal(0, held.Overloaded!.Value);
        Assert.True(bare.Overloaded!.Value > 0.5);
    }

    // The mean current of a chip behind 820 Ω on 4.8 V is near (4.8 − 2.75) ÷ 820 = 2.5 mA by hand; eight of them take 20 mA, and no bag makes that 10 % more or less.
    [Fact]
    public void The_range_of_a_pack_on_known_parts_is_narrow_and_holds_what_was_planned()
    {
        var load = Street(ResistorChoice.Of(Resistance.FromOhms(820))).Load;
        Assert.InRange(load.Value, 0.018, 0.022);
        Assert.True(load.Low < 0.020 * 1.05 && load.High > 0.020 * 0.95 && load.High - load.Low < 0.2 * load.Value);
    }

    [Fact]
    public void What_is_not_known_widens_the_range()
    {
        var known = Street(ResistorChoice.Of(Resistance.FromOhms(470))).Load;
        var unknown = Street(ResistorChoice.Unknown).Load;
        Assert.True((unknown.High - unknown.Low) / unknown.Value > 2 * (known.High - known.Low) / known.Value);
    }

    [Fact]
    public void Cells_as_sold_last_within_a_range_about_the_planned_hours()
    {
        var hours = Street(ResistorChoice.Of(Resistance.FromOhms(270))).Hours!;
        Assert.True(hours.Low < hours.Value && hours.Value < hours.High);
        Assert.True(hours.High < 2 * hours.Low);
    }

    [Fact]
    public void A_mains_adaptor_does_not_run_down() =>
        Assert.Null(TownStudy.Of(Town(ResistorChoice.Of(Resistance.FromOhms(270)), new Supply { Id = "1", Part = "usb-5v" })).Spread("1")!.Hours);

    [Fact]
    public void Steady_lamps_waver_only_where_some_flicker()
    {
        Assert.Null(Street(ResistorChoice.Of(Resistance.FromOhms(270))).Disturbed);
        var wavering = Assert.IsType<DisturbedNeighbour>(Saltmarrow.Spread("3")!.Disturbed);
        Assert.True(wavering.Step.Value > 0);
        Assert.DoesNotContain("flicker", Saltmarrow.Lamps.Single(l => l.Building == wavering.Building && l.Name == wavering.Lamp).Part.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_pack_of_the_demo_has_a_spread_and_asking_twice_gives_the_same() => Assert.All(Saltmarrow.Packs, pack =>
    {
        var spread = Saltmarrow.Spread(pack.Supply.Id)!;
        Assert.NotEmpty(spread.Kinds);
        Assert.Equal(spread, TownStudy.Of(Demo.Saltmarrow).Spread(pack.Supply.Id));
    });

    [Fact]
    public void A_fuse_that_is_advised_carries_the_lamps_and_opens_with_worn_cells_too() => Assert.All(Saltmarrow.Packs, pack =>
    {
        if (pack.ShortCircuit!.Advice is not { } advice)
        {
            return;
        }

        var fitted = Saltmarrow.After(Saltmarrow.Town with { Supplies = Saltmarrow.Town.Supplies.Select(s => s.Id == pack.Supply.Id ? s with { Fuse = advice.Fuse.Id } : s).ToItemList() });
        var after = fitted.Packs.Single(p => p.Supply.Id == pack.Supply.Id);
        Assert.True(after.ShortCircuit!.FuseOpens);
        Assert.True(advice.Fuse.Hold.Amperes >= 1.9 * after.Load!.Value);
        Assert.True(advice.WireTemperature.Value <= pack.ShortCircuit.WireTemperature.Value);
    });

    private static SpreadResult Street(ResistorChoice resistor) => TownStudy.Of(Town(resistor, new Supply { Id = "1", Part = "LR6", Series = 3 })).Spread("1")!;

    private static Town Town(ResistorChoice resistor, Supply supply) => new()
    {
        Name = "Fenhithe",
        Supplies = [supply],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Buildings = [.. Enumerable.Range(1, 4).Select(i => new Building
        {
            Name = $"Eel house {i}", SwitchGroup = "A", Led = "led-0603-warm-white", Leds = 2, Resistor = resistor, PairLength = Length.FromMillimetres(300), Wire = "cu-0.20",
        })],
    };
}
