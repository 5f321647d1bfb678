using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Findings;
using Duskwright.Study.Questions;

namespace Duskwright.Study.Tests.Findings;

/// <summary>What spoils a first town is said with its reason, reckoned for the case at hand.</summary>
public class WarningsTests
{
    private static Finding? Of(string rule, string cell, int cells, string lamp, double ohms, int lamps, int rows = 1)
    {
        var town = BenchTown.Of(new Supply { Id = "1", Part = cell, Series = cells, Parallel = rows }, Catalogue.FindLamp(new Town { Name = "" }, lamp)!, Resistance.FromOhms(ohms), lamps, new Show());
        return TownStudy.Of(town).Findings.FirstOrDefault(f => f.Rule == rule);
    }

    // By hand: white needs 2.70 V at 1 mA, amber 1.75 V (common practice, no source); two cells late in their life give 2 × 1.1 V.
    [Fact]
    public void A_white_lamp_on_two_cells_fades_early_and_an_amber_one_does_not()
    {
        var finding = Of("needs-more-volts", "LR6", 2, "led-0603-white", 100, 4)!;
        Assert.Equal([2.7, 2.2], finding.Figures.Select(f => Math.Round(f.Value, 2)));
        Assert.Null(Of("needs-more-volts", "LR6", 2, "led-0603-amber", 560, 4));
        Assert.Null(Of("needs-more-volts", "LR6", 3, "led-0603-white", 820, 4));
    }

    // By hand: without a resistor a white lamp on three cells would have to drop 4.8 V, far beyond its 20 mA; ten on the 14 Ω of a coin cell stay below it.
    [Fact]
    public void Lamps_without_a_resistor_are_told_of_and_with_one_they_are_not()
    {
        Assert.NotNull(Of("lamp-overdriven", "LR6", 3, "led-0603-warm-white", 0, 4));
        Assert.NotNull(Of("no-resistor", "CR2032", 1, "led-0603-warm-white", 0, 10));
        Assert.Null(Of("no-resistor", "CR2032", 1, "led-0603-warm-white", 47, 10));
    }

    // Common practice, no source: a coin cell is at ease with 0.2 mA, a power bank may sleep under 50 mA.
    [Theory]
    [InlineData("coin-cell", "CR2032", 3, true)]
    [InlineData("coin-cell", "LR6", 3, false)]
    [InlineData("bank-sleeps", "power-bank-5v", 4, true)]
    [InlineData("bank-sleeps", "power-bank-5v", 60, false)]
    [InlineData("bank-sleeps", "usb-5v", 4, false)]
    public void A_supply_that_does_not_suit_is_told_of(string rule, string supply, int lamps, bool told) =>
        Assert.Equal(told, Of(rule, supply, 1, "led-0603-warm-white", 820, lamps) is not null);

    // By hand from the cell's curve: three fresh cells 4.845 V, three half used 3.739 V (1.2464 V each, between its points), 0.885 and 1.063 Ω inside:
    // 1.106 ÷ 1.948 = 0.57 A with bare cells, 0.47 A with 0.2 Ω of holder in each row.
    [Fact]
    public void Rows_of_cells_side_by_side_feed_one_another_with_half_an_ampere()
    {
        Assert.InRange(Of("rows-feed-each-other", "LR6", 3, "led-0603-warm-white", 820, 10, rows: 2)!.Figures[0].Value, 0.47, 0.57);
        Assert.Null(Of("rows-feed-each-other", "LR6", 3, "led-0603-warm-white", 820, 10));
        Assert.Null(Of("rows-feed-each-other", "usb-5v", 1, "led-0603-warm-white", 820, 10, rows: 2));
    }
}
