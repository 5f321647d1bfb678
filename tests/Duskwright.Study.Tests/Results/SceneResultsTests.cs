using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Results;

namespace Duskwright.Study.Tests.Results;

/// <summary>Scenes as switch states of their own.</summary>
public class SceneResultsTests
{
    private static readonly TownStudy Harbour = TownStudy.Of(Demo.Saltmarrow);

    [Fact]
    public void A_scene_with_every_switch_on_is_the_town_with_everything_on()
    {
        var all = Harbour.Scenes.Single(s => s.Scene.Name == "the whole town");
        Assert.Equal(Harbour.Lamps.Count(l => l.Supply is not null), all.Lamps);
        Assert.Equal(
            Harbour.Packs.Where(p => p.Load is not null).Select(p => (p.Supply.Id, p.Load!.Value, p.Load.Low, p.Load.High, p.HoursToDim?.Value)),
            all.Packs.Select(p => (p.Supply, p.Load.Value, p.Load.Low, p.Load.High, p.HoursToDim?.Value)));
    }

    [Fact]
    public void A_scene_of_one_switch_reads_what_a_meter_reads_with_that_switch_alone_on()
    {
        var switches = Harbour.Town.SwitchGroups.Select(g => new Scene { Name = g.Id, On = [g.Id] }).ToItemList();
        var alone = Harbour.After(Harbour.Town with { Scenes = switches });
        Assert.Equal(Harbour.SwitchList.Select(s => (s.Id, s.Lamps)), alone.Scenes.Select(s => (s.Scene.Name, s.Lamps)));
        Assert.All(Harbour.SwitchList.Zip(alone.Scenes, (s, scene) => (Meter: s.Current!, scene.Packs.Single().Load)), x =>
        {
            Assert.Equal(x.Meter.Value, x.Load.Value, 1e-9);
            Assert.Equal(x.Meter.Low!.Value, x.Load.Low!.Value, 1e-9);
            Assert.Equal(x.Meter.High!.Value, x.Load.High!.Value, 1e-9);
        });
    }

    [Fact]
    public void Two_like_switches_take_twice_the_current_of_one_from_a_stiff_supply()
    {
        // Kirchhoff's current law. Ten lamps at 330 Ω on 5 V take about 6 mA each; what they share drops millivolts of the two volts over a resistor.
        var (both, one) = (Street("usb-5v", 1, "A", "B"), Street("usb-5v", 1, "A"));
        Assert.Equal(2, both.Load.Value / one.Load.Value, 0.03);
        Assert.Null(both.HoursToDim);
        Assert.Null(both.Worst);
    }

    [Fact]
    public void Half_the_lamps_use_up_the_same_charge_in_about_twice_the_time()
    {
        // Charge is conserved, and at tens of milliamperes an LR6 gives nearly the same charge at either rate (common practice, no source).
        var (both, one) = (Street("LR6", 3, "A", "B"), Street("LR6", 3, "A"));
        Assert.InRange(one.HoursToDim!.Value * one.Load.Value / (both.HoursToDim!.Value * both.Load.Value), 0.95, 1.1);
        Assert.InRange(one.HoursToDim.Value / both.HoursToDim.Value, 1.8, 2.2);
        Assert.InRange(one.Worst!.Lightness.Value, both.Worst!.Lightness.Value, 100);
    }

    [Fact]
    public void The_worst_lamp_of_a_scene_is_dim_at_the_end_when_the_scene_dims_before_it()
    {
        var scene = Harbour.Scenes[0];
        var (end, half) = (Harbour.Town.Show.HoursPerDay.Hours * Harbour.Town.Show.Days, 76.07); // CIE 15: 116·∛0.5 − 16 = 76.07
        Assert.Contains(scene.Packs, p => p.HoursToDim?.Value < end);
        Assert.All(scene.Packs.Where(p => p.HoursToDim is not null), p => Assert.Equal(p.HoursToDim!.Value < end, p.Worst!.Lightness.Value < half));
    }

    [Fact]
    public void A_switch_that_takes_from_no_pack_is_named_and_lights_nothing()
    {
        var town = Houses("LR6", 3) with { Scenes = [new Scene { Name = "fair", On = ["A", "C"] }] };
        town = town with { SwitchGroups = town.SwitchGroups.Add(new SwitchGroup { Id = "C" }) };
        var scene = TownStudy.Of(town).Scenes[0];
        Assert.Equal((["C"], 10), (scene.Unfed, scene.Lamps));
    }

    [Fact]
    public void The_switch_list_names_the_scenes_a_switch_is_on_in() =>
        Assert.Equal(
            [("A", "the whole town"), ("D", "the whole town, late evening")],
            Harbour.SwitchList.Where(s => s.Id is "A" or "D").Select(s => (s.Id, string.Join(", ", s.Scenes))));

    private static ScenePack Street(string part, int series, params string[] on) =>
        TownStudy.Of(Houses(part, series) with { Scenes = [new Scene { Name = "fair", On = on.ToItemList() }] }).Scenes[0].Packs.Single();

    // Two houses of ten lamps, each on a switch of its own, both on one supply.
    private static Town Houses(string part, int series) => new()
    {
        Name = "Street",
        Supplies = [new Supply { Id = "1", Part = part, Series = series }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }, new SwitchGroup { Id = "B", Supply = "1" }],
        Buildings = new[] { "A", "B" }.Select(g => new Building
        {
            Name = $"House {g}",
            Leds = 10,
            SwitchGroup = g,
            PairLength = Length.FromMillimetres(300),
            Resistor = ResistorChoice.Of(Resistance.FromOhms(330)),
        }).ToItemList(),
    };
}
