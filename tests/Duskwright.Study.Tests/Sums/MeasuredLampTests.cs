using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Sums;

namespace Duskwright.Study.Tests.Sums;

/// <summary>An unlabelled LED made out on the bench.</summary>
public class MeasuredLampTests
{
    // By hand: the lamp's law is a straight line through both readings in ln I and I; the part must give both back within what a cheap meter tells,
    // 0.5 % and 2 counts of 10 mV (typical, from memory).
    [Fact]
    public void Two_readings_lie_on_the_curve_of_the_part()
    {
        var part = MeasuredLamp.Of("drawer 3", "white", [(1.9, 2.79), (6.2, 2.93)]);
        Assert.Equal(2.79, Volts(part, 1.9), 0.035);
        Assert.Equal(2.93, Volts(part, 6.2), 0.035);
        Assert.Equal((Certainty.Measured, "read on the bench: 2.79 V at 1.9 mA, 2.93 V at 6.2 mA"), (part.Certainty, part.Source));
    }

    // Common practice, no source: red to yellow chips have about 1.8 V at a milliampere, white, blue and green ones about 2.7 V.
    [Theory]
    [InlineData("red", 1.6, 1.9)]
    [InlineData("amber", 1.6, 1.9)]
    [InlineData("white", 2.5, 2.9)]
    [InlineData("green", 2.5, 2.9)]
    public void Without_a_reading_its_colour_tells_about_what_it_is(string colour, double least, double most)
    {
        var part = MeasuredLamp.Of("found", colour, []);
        Assert.InRange(part.ReferenceVoltage.Volts, least, most);
        Assert.Equal(Certainty.Assumed, part.Certainty);
    }

    [Fact]
    public void Each_reading_makes_its_voltage_narrower()
    {
        var (none, one, two) = (Spread([]), Spread([(2.0, 2.8)]), Spread([(2.0, 2.8), (8.0, 2.97)]));
        Assert.True(none > one && one > two, $"{none} > {one} > {two}");
    }

    // By hand: 4.5 V less 2.9 V over 330 Ω is 4.8 mA.
    [Fact]
    public void A_house_may_be_lit_by_it_at_once()
    {
        var town = new KeepLamp(MeasuredLamp.Of("drawer 3", "white", [(1.9, 2.79), (6.2, 2.93)])).Apply(new Town
        {
            Name = "Bench",
            Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
            SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
            Buildings = [new Building { Name = "Mill", Leds = 1, Led = "own-drawer-3", Resistor = ResistorChoice.Of(Resistance.FromOhms(330)), Distance = Length.FromMillimetres(200), SwitchGroup = "A" }],
        });
        Assert.Empty(TownChecks.Of(town));
        Assert.InRange(TownStudy.Of(town).Lamps[0].Current!.Value, 4.4e-3, 5.9e-3);
    }

    [Fact]
    public void A_lamp_kept_under_the_same_name_takes_the_place_of_the_first()
    {
        var twice = new KeepLamp(MeasuredLamp.Of("drawer 3", "red", [])).Apply(new KeepLamp(MeasuredLamp.Of("drawer 3", "white", [])).Apply(new Town { Name = "Bench" }));
        Assert.Equal("red", Assert.Single(twice.OwnParts.Lamps).Colour);
    }

    private static double Spread(ItemList<(double, double)> readings) => MeasuredLamp.Of("found", "white", readings).VoltageSpread.Volts;

    // The law as LampPart tells it: V_ref + n·V_T·ln(I/I_ref) + R·(I − I_ref), kT/q at 20 °C being 25.26 mV.
    private static double Volts(LampPart part, double milliamperes) =>
        part.ReferenceVoltage.Volts + (part.Ideality * 0.02526 * Math.Log(milliamperes / part.ReferenceCurrent.Milliamperes)) + (part.SeriesResistance.Ohms * (milliamperes - part.ReferenceCurrent.Milliamperes) / 1e3);
}
