using System.Globalization;
using Duskwright.Light.Colour;
using Duskwright.Light.Perception;

namespace Duskwright.Light.Tests.Colour;

// Source: tests/Reference/colour-checks.csv; each row names its own (CIE tables and worked values of an open colour library, BSD-3-Clause).
public class ColourChecksTests
{
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Rows = ReferenceRows.Of("colour-checks.csv");
    private static readonly string[] Spectra = ["spd=A", "spd=D65", "spd=LED-B1", "temperature_k", "peak_nm", "spd=planck"];

    public static TheoryData<string> Ids(string quantity) =>
        [.. Rows.Where(r => r["quantity"].StartsWith(quantity, StringComparison.Ordinal) && (!r["inputs"].Contains("spd=", StringComparison.Ordinal) || Spectra.Any(s => r["inputs"].StartsWith(s + ";", StringComparison.Ordinal) || r["inputs"].StartsWith(s + " ", StringComparison.Ordinal)))).Select(r => r["id"])];

    [Theory]
    [MemberData(nameof(Ids), "chromaticity")]
    [MemberData(nameof(Ids), "Planckian chromaticity")]
    [MemberData(nameof(Ids), "Gaussian LED chromaticity")]
    public void A_light_has_the_chromaticity_of_the_tables(string id)
    {
        var row = Rows.Single(r => r["id"] == id);
        var colour = Light(row).Tristimulus().Chromaticity;
        Assert.Equal(row.Number("value"), row["output"] == "x_1" ? colour.X : colour.Y, row.Number("tolerance_abs"));
    }

    [Theory]
    [MemberData(nameof(Ids), "Planckian CIE 1960")]
    public void A_glowing_body_has_the_place_of_the_tables_in_the_1960_diagram(string id)
    {
        var row = Rows.Single(r => r["id"] == id);
        var colour = Light(row).Tristimulus().Chromaticity;
        Assert.Equal(row.Number("value"), row["output"] == "u_1" ? colour.U : colour.V, row.Number("tolerance_abs"));
    }

    [Theory]
    [MemberData(nameof(Ids), "Gaussian LED luminous efficacy")]
    [MemberData(nameof(Ids), "luminous efficacy of radiation, truncated")]
    public void A_watt_of_a_light_has_the_lumens_of_the_tables(string id)
    {
        var row = Rows.Single(r => r["id"] == id);
        Assert.Equal(row.Number("value"), Light(row).LuminousEfficacy, row.Number("tolerance_abs"));
    }

    [Theory]
    [MemberData(nameof(Ids), "amber glazing")]
    public void Amber_glazing_dims_and_warms_a_light_as_computed_from_the_tables(string id)
    {
        var row = Rows.Single(r => r["id"] == id);
        var (light, amber) = (Light(row), Spectrum.LongPass(560));
        var behind = light.Through(amber).Tristimulus().Chromaticity;
        var found = row["output"] switch { "tau_v_1" => light.SharePassing(amber), "x_1" => behind.X, _ => behind.Y };
        Assert.Equal(row.Number("value"), found, row.Number("tolerance_abs"));
    }

    [Fact]
    public void A_colour_temperature_is_that_of_the_nearest_glowing_body()
    {
        // Rows COL-045 and COL-046: u 0.1978, v 0.3122 by Ohno's method. x = 3u/(2u − 8v + 4), y = 2v/(2u − 8v + 4).
        var (u, v) = (Rows.Single(r => r["id"] == "COL-045").Input("u"), Rows.Single(r => r["id"] == "COL-045").Input("v"));
        var denominator = (2 * u) - (8 * v) + 4;
        var (kelvin, duv) = new Chromaticity(3 * u / denominator, 2 * v / denominator).ColourTemperature()!.Value;
        Assert.Equal(Rows.Single(r => r["id"] == "COL-045").Number("value"), kelvin, Rows.Single(r => r["id"] == "COL-045").Number("tolerance_abs"));
        Assert.Equal(Rows.Single(r => r["id"] == "COL-046").Number("value"), duv, Rows.Single(r => r["id"] == "COL-046").Number("tolerance_abs"));
    }

    [Theory]
    [InlineData(1850)]
    [InlineData(2700)]
    [InlineData(6500)]
    public void A_glowing_body_has_its_own_temperature_as_colour_temperature(double kelvin) =>
        Assert.Equal(kelvin, Spectrum.Glowing(kelvin).Tristimulus().Chromaticity.ColourTemperature()!.Value.Kelvin, kelvin * 1e-4);

    [Fact]
    public void A_green_lamp_has_no_colour_temperature() => Assert.Null(LampSpectra.OfLed("green").Tristimulus().Chromaticity.ColourTemperature());

    [Theory]
    [MemberData(nameof(Ids), "sRGB encoding")]
    public void A_screen_is_sent_what_the_standard_says(string id)
    {
        var row = Rows.Single(r => r["id"] == id);
        Assert.Equal(row.Number("value"), Srgb.Encoded(row.Input("linear")), row.Number("tolerance_abs"));
    }

    [Theory]
    [MemberData(nameof(Ids), "linear sRGB of a source")]
    public void A_light_has_the_linear_parts_of_the_standard(string id)
    {
        var row = Rows.Single(r => r["id"] == id);
        var light = row.InputText("source") switch { "planck 1850 K" => Spectrum.Glowing(1850), "LED-B1" => Spectrum.WarmWhiteLed, _ => Spectrum.Line(590, 15) };
        var (red, green, blue) = Srgb.Linear(light.Tristimulus());
        Assert.Equal(row.Number("value"), row["output"] switch { "linear_r_1" => red, "linear_g_1" => green, _ => blue }, row.Number("tolerance_abs"));
    }

    [Theory]
    [MemberData(nameof(Ids), "CIE L*")]
    public void Lightness_is_that_of_the_standard(string id)
    {
        var row = Rows.Single(r => r["id"] == id);
        Assert.Equal(row.Number("value"), Lightness.OfShare(row.Input("Y_percent") / 100), row.Number("tolerance_abs"));
    }

    [Fact]
    public void A_light_no_screen_can_show_keeps_its_luminance_and_says_so()
    {
        // Row COL-127: a yellow LED has blue −0.1277, outside; warm white, all parts above zero, is inside.
        var yellow = Srgb.Brightest(Spectrum.Line(590, 15).Tristimulus());
        Assert.True(yellow.Outside);
        Assert.Equal(0, yellow.Blue, 1e-12);
        Assert.Equal(1, yellow.Red, 1e-12);
        Assert.False(Srgb.Brightest(Spectrum.WarmWhiteLed.Tristimulus()).Outside);
        Assert.Equal("#FFFFFF", Srgb.Brightest(new(0.9505, 1, 1.089)).Hex);
    }

    [Fact]
    public void A_filament_below_its_rated_volts_is_redder() =>
        Assert.True(LampSpectra.OfFilament(0.7).Tristimulus().Chromaticity.X > LampSpectra.OfFilament(1).Tristimulus().Chromaticity.X);

    private static Spectrum Light(IReadOnlyDictionary<string, string> row)
    {
        var first = row["inputs"].Split(';')[0].Split('=', 2);
        return (first[0], first[1]) switch
        {
            ("spd", "A") => Spectrum.IlluminantA,
            ("spd", "D65") => Spectrum.IlluminantD65,
            ("spd", "LED-B1") => Spectrum.WarmWhiteLed,
            ("spd", _) => Spectrum.Glowing(double.Parse(first[1].Split(' ')[1], CultureInfo.InvariantCulture)),
            ("peak_nm", _) => Spectrum.Line(row.Input("peak_nm"), row.Input("fwhm_nm")),
            _ => Spectrum.Glowing(double.Parse(first[1], CultureInfo.InvariantCulture)),
        };
    }
}
