using Duskwright.Circuits.Wires;

namespace Duskwright.Circuits.Tests.Wires;

public sealed class CopperTests
{
    private const double MetresPer1000Feet = 304.8;

    // Source: HyperPhysics (Georgia State University), "American Wire Gages (AWG) Sizes and Resistances", tests/Reference/awg-copper-wire.csv,
    // ohm per 1000 ft at 20 °C; diameter by ASTM B258. The table's own copper differs from 1.7241e-8 Ω·m by up to 0.3 %.
    [Theory]
    [MemberData(nameof(Gauges))]
    public void A_gauge_wire_resists_as_printed(string gauge, double diameterMillimetres, double ohmsPer1000Feet)
    {
        Assert.NotEmpty(gauge);
        Assert.Equal(ohmsPer1000Feet, Copper.OhmsPerMetre(diameterMillimetres / 1e3) * MetresPer1000Feet, 0.003 * ohmsPer1000Feet);
    }

    public static TheoryData<string, double, double> Gauges()
    {
        var rows = new TheoryData<string, double, double>();
        foreach (var row in ReferenceRows.Of("awg-copper-wire.csv"))
        {
            rows.Add(row["awg"], row.Number("diameter_law_mm"), row.Number("resistance_read_ohm_per_1000ft"));
        }

        return rows;
    }

    // Source: public table "Imperial Standard Wire Gauge (SWG) and wire resistances", tests/Reference/swg-copper-wire.csv: area, and
    // resistance to 3 figures (up to 0.5 %). Row 14 carries a misprint and is left out, as its note says.
    [Theory]
    [MemberData(nameof(StandardGauges))]
    public void A_standard_gauge_wire_resists_as_printed(string gauge, double areaSquareMillimetres, double ohmsPerMetre)
    {
        Assert.NotEmpty(gauge);
        var diameterMetres = Math.Sqrt(areaSquareMillimetres * 1e-6 * 4 / Math.PI);
        Assert.Equal(ohmsPerMetre, Copper.OhmsPerMetre(diameterMetres), 0.005 * ohmsPerMetre);
    }

    public static TheoryData<string, double, double> StandardGauges()
    {
        var rows = new TheoryData<string, double, double>();
        foreach (var row in ReferenceRows.Of("swg-copper-wire.csv").Where(r => !r["note"].Contains("misprint", StringComparison.Ordinal)))
        {
            rows.Add(row["swg"], row.Number("area_mm2"), row.Number("resistance_ohm_per_m"));
        }

        return rows;
    }

    // Source: IEC 60228 factors k_t as printed on a cable technical page, tests/Reference/copper-temperature-correction.csv. That table has
    // α = 0.004 where IEC 60028 has 0.00393, which is 0.4 % at 100 °C; 0.0005 is half its last digit.
    [Theory]
    [MemberData(nameof(Temperatures))]
    public void Warm_copper_resists_more_as_printed(double celsius, double factorTo20)
    {
        var factor = Copper.OhmsPerMetre(0.25e-3) / Copper.OhmsPerMetre(0.25e-3, celsius);
        Assert.Equal(factorTo20, factor, (0.004 * factorTo20) + 0.0005);
    }

    public static TheoryData<double, double> Temperatures()
    {
        var rows = new TheoryData<double, double>();
        foreach (var row in ReferenceRows.Of("copper-temperature-correction.csv"))
        {
            rows.Add(row.Number("temperature_c"), row.Number("kt_published"));
        }

        return rows;
    }

    // Source: OpenStax, College Physics 2e, Resistance and Resistivity: 20.0 m of 2.053 mm copper; printed 0.104 Ω (with 1.72e-8 Ω·m).
    [Fact]
    public void Twenty_metres_of_twelve_gauge_resist_as_in_the_textbook() => Assert.Equal(0.104, 20 * Copper.OhmsPerMetre(2.053e-3), 0.0005);

    // Source: common practice, no source: Ω per metre of one conductor as makers reckon.
    [Theory]
    [InlineData(0.10, 2.20)]
    [InlineData(0.15, 0.98)]
    [InlineData(0.20, 0.55)]
    [InlineData(0.25, 0.35)]
    public void Hair_wire_resists_as_makers_reckon(double millimetres, double ohmsPerMetre) =>
        Assert.Equal(ohmsPerMetre, Copper.OhmsPerMetre(millimetres / 1e3), 0.005);
}
