using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Sums;

namespace Duskwright.Study.Tests.Sums;

public class QuickSumsTests
{
    private static readonly Town Nowhere = new() { Name = "" };
    private static readonly Supply ThreeCells = new() { Id = "1", Part = "LR6", Series = 3 };

    // Common practice, no source: table of resistors for white and amber lamps at a supply voltage, exact value rounded up to E12 (IEC 60063).
    // Left out: white, 5 V, 1 mA, where the table takes the lamp at 2.8 V and our curve gives 2.70 V, so 2.3 kΩ becomes 2.7 kΩ instead of 2.2 kΩ.
    [Theory]
    [InlineData("led-0603-warm-white", "LR6", 3, 1, 1800)]
    [InlineData("led-0603-warm-white", "LR6", 3, 2, 1000)]
    [InlineData("led-0603-warm-white", "LR6", 3, 5, 390)]
    [InlineData("led-0603-warm-white", "LR6", 3, 10, 180)]
    [InlineData("led-0603-warm-white", "usb-5v", 1, 2, 1200)]
    [InlineData("led-0603-warm-white", "usb-5v", 1, 10, 220)]
    [InlineData("led-0603-warm-white", "6LR61", 1, 1, 6800)]
    [InlineData("led-0603-warm-white", "adaptor-12v", 1, 2, 4700)]
    [InlineData("led-0603-amber", "LR6", 3, 2, 1500)]
    [InlineData("led-0603-amber", "LR6", 3, 5, 560)]
    [InlineData("led-0603-amber", "adaptor-12v", 1, 5, 2200)]
    public void The_resistor_is_that_of_the_trades_table(string lamp, string part, int cells, double milliamperes, double ohms) =>
        Assert.Equal(ohms, QuickSums.WhichResistor(new Supply { Id = "1", Part = part, Series = cells }, Catalogue.FindLamp(Nowhere, lamp)!, Current.FromMilliamperes(milliamperes)).Headline.Value, 1e-9);

    // Source: hand arithmetic, IACS copper: 26 AWG (0.12876 mm²) has 0.1339 Ω/m, so 2 × 2 m × 0.1339 × 0.15 A = 0.0803 V; at most 0.1 ÷ (4 × 0.15) = 0.1667 Ω/m; 28 AWG (0.213 Ω/m) fails.
    [Fact]
    public void Two_metres_at_a_hundred_and_fifty_milliamperes_want_26_AWG()
    {
        var answer = QuickSums.WhichWire(Length.FromMillimetres(2000), Current.FromMilliamperes(150), Voltage.FromVolts(0.1));
        Assert.Equal(0.0803, answer.Headline.Value, 0.0001);
        Assert.Contains("26 AWG", answer.Text, StringComparison.Ordinal);
    }

    // Common practice, no source: hours to half and a third of the first current, 3 LR6, 820 Ω: 30 lamps 26 and 47, 60 lamps 13 and 23. Such figures hold to about a quarter.
    [Theory]
    [InlineData(30, 26)]
    [InlineData(60, 13)]
    public void Hours_to_half_light_are_those_of_the_trade_to_a_quarter(int lamps, double hours) =>
        Assert.InRange(
            QuickSums.HowLong(ThreeCells, Catalogue.FindLamp(Nowhere, "led-0603-warm-white")!, Resistance.FromOhms(820), lamps, new Show { HoursPerDay = Duration.FromHours(7) }).Headline.Value,
            hours * 0.75,
            hours * 1.25);

    [Fact]
    public void A_white_lamp_on_two_cells_is_warned_of() =>
        Assert.Contains(
            QuickSums.WhichResistor(new Supply { Id = "1", Part = "LR6", Series = 2 }, Catalogue.FindLamp(Nowhere, "led-0603-white")!, Current.FromMilliamperes(1)).Warnings,
            w => w.Contains("fade early", StringComparison.Ordinal));

    // Common practice, no source: a switched pack carries about twenty lamps before they look dim. Bare flickering lamps, lit at 18 mA, on two LR6; nothing is tuned to twenty.
    [Fact]
    public void About_twenty_bare_flickering_lamps_on_two_cells_look_visibly_dimmer()
    {
        var answer = QuickSums.HowManyLamps(new Supply { Id = "1", Part = "LR6", Series = 2 }, Catalogue.FindLamp(Nowhere, "flicker-3mm-yellow")!, Resistance.FromOhms(0), new Show { HoursPerDay = Duration.FromHours(3) });
        Assert.InRange(answer.Figures[0].Value, 10, 40);
    }
}
