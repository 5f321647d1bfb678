using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests.Parts;

public class PreferredValuesTests
{
    [Theory]
    [InlineData("E12")]
    [InlineData("E24")]
    public void A_series_is_that_of_the_standard(string series)
    {
        // Source: IEC 60063 values as printed on a public reference page (tests/Reference/e-series.csv).
        var printed = ReferenceRows.Of("e-series.csv").Where(r => r["series"] == series).Select(r => (int)r.Number("value"));
        Assert.Equal(printed, series == "E12" ? PreferredValues.E12 : PreferredValues.E24);
    }

    [Fact]
    public void A_computed_resistance_is_rounded_up_to_the_next_value_and_an_exact_hit_stays()
    {
        // Source: tests/Reference/e-series-rounding-checks.csv, worked from the printed lists of IEC 60063.
        var rows = ReferenceRows.Of("e-series-rounding-checks.csv");
        Assert.True(rows.Count > 15);
        Assert.All(rows, row =>
        {
            var exact = Resistance.FromOhms(row.Number("exact_ohm"));
            Assert.Equal(row.Number("e12_next_up_ohm"), PreferredValues.NextUp(PreferredValues.E12, exact).Ohms);
            Assert.Equal(row.Number("e24_next_up_ohm"), PreferredValues.NextUp(PreferredValues.E24, exact).Ohms);
        });
    }

    [Fact]
    public void Every_value_of_a_series_asks_for_itself_in_every_decade()
    {
        foreach (var decade in new[] { 0.1, 1, 10, 100, 1000, 10_000, 100_000 })
        {
            Assert.All(PreferredValues.E24, value => Assert.Equal(value * decade, PreferredValues.NextUp(PreferredValues.E24, Resistance.FromOhms(value * decade)).Ohms, 1e-9 * value * decade));
        }
    }

    [Fact]
    public void No_resistance_at_all_has_no_next_value() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PreferredValues.NextUp(PreferredValues.E12, default));
}
