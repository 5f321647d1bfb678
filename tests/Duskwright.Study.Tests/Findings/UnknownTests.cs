using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Findings;

namespace Duskwright.Study.Tests.Findings;

/// <summary>An inherited town, half of it glued: ranges, and the one measurement that narrows them most.</summary>
public class UnknownTests
{
    private static readonly Building Minster = new() { Name = "Minster", Leds = 4, Led = PartId.Unknown, Resistor = ResistorChoice.Unknown, Distance = Length.FromMillimetres(300), SwitchGroup = "A", State = BuildingState.Fixed };
    private static readonly Building Mill = new() { Name = "Mill", Leds = 1, Led = PartId.Unknown, Resistor = ResistorChoice.Unknown, Distance = Length.FromMillimetres(200), SwitchGroup = "A", State = BuildingState.Fitted };

    // By hand: three fresh alkaline cells give 4.8 V; an unknown lamp takes least as a white one of 2.9 V at that current behind 1 kΩ, 1.9 mA, and most as a
    // red or yellow one of 2.0 V behind the (4.5 − 3.1) V ÷ 20 mA = 70 Ω that a white one would bear, 82 Ω in E12: 2.8 V ÷ 82 Ω = 34 mA, less what cells and wire keep.
    // Common practice, no source.
    [Fact]
    public void The_house_with_the_widest_range_is_to_be_measured_first_and_its_range_is_that_of_its_lamps()
    {
        var first = First(Minster, Mill)!;
        Assert.Equal(Subject.Building("minster"), first.Subject);
        Assert.InRange(first.Figures[0].Value, 4 * 1.5e-3, 4 * 1.95e-3);
        Assert.InRange(first.Figures[1].Value, 4 * 26e-3, 4 * 35e-3);
        Assert.InRange(first.Figures[2].Value, 60, 85);
        Assert.StartsWith("Read its current at the bank", first.Remedy, StringComparison.Ordinal);
    }

    // By hand: behind a known 270 Ω at 5 %, (4.5 − 3.2) V ÷ 284 Ω = 4.6 mA for a white lamp on cells no longer new, (4.8 − 1.9) V ÷ 256 Ω = 11.3 mA
    // for a yellow one on fresh ones. Common practice, no source.
    [Fact]
    public void Where_the_roof_comes_off_the_resistor_is_read_and_what_is_then_left_is_told()
    {
        var first = First(Mill)!;
        Assert.Contains("Were its resistor known", first.Words, StringComparison.Ordinal);
        Assert.Contains("bands of one resistor", first.Remedy, StringComparison.Ordinal);
        Assert.InRange(first.Figures[3].Value, 4.4e-3, 7.0e-3);
        Assert.InRange(first.Figures[4].Value, 9.5e-3, 11.6e-3);
        Assert.True(first.Figures[4].Value - first.Figures[3].Value < first.Figures[1].Value - first.Figures[0].Value);
    }

    [Fact]
    public void In_a_house_that_is_glued_down_nobody_is_sent_to_a_resistor_out_of_sight()
    {
        var first = First(Minster)!;
        Assert.DoesNotContain("resistor", first.Words + first.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_house_that_is_not_built_yet_is_not_to_be_read_at_the_bank() =>
        Assert.DoesNotContain("at the bank", First(Mill with { State = BuildingState.Idea })!.Remedy, StringComparison.Ordinal);

    // Nobody said how far it is, so it may be as near as the nearest and as far as the farthest: (200 to 300 mm) × detour + slack.
    [Fact]
    public void A_length_that_is_not_known_is_a_range_of_wire_with_the_thread_that_settles_it()
    {
        var study = Study(Known(Minster), Known(Mill), Known(Mill) with { Name = "Lookout", Distance = null, Led = null });
        var lookout = Assert.Single(study.Findings, f => f.Rule == "length-not-known");
        var pair = study.Buildings.ToDictionary(b => b.Building.Key, b => b.PairLength);
        Assert.Equal(Subject.Building("lookout"), lookout.Subject);
        Assert.InRange(lookout.Figures[0].Value, 0.05, pair["mill"].Value);
        Assert.InRange(lookout.Figures[1].Value, pair["minster"].Value, pair["minster"].High!.Value + 0.2);
        Assert.Contains("thread", lookout.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_a_town_that_is_known_nothing_is_to_be_measured_first() =>
        Assert.DoesNotContain(Study(Known(Minster), Known(Mill)).Findings, f => f.Rule is "measure-first" or "not-known" or "length-not-known");

    private static Building Known(Building house) => house with { Led = "led-0603-white", Resistor = ResistorChoice.Of(Resistance.FromOhms(270)) };

    private static Finding? First(params Building[] houses) => Study(houses).Findings.FirstOrDefault(f => f.Rule == "measure-first");

    private static TownStudy Study(params Building[] houses) => TownStudy.Of(new Town
    {
        Name = "Inherited",
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Wiring = new WiringChoices { Resistor = ResistorChoice.Of(Resistance.FromOhms(270)) },
        Buildings = houses.ToItemList(),
    });
}
