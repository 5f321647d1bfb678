using Duskwright.Light.Camera;

namespace Duskwright.Light.Tests.Camera;

// Source: tests/Reference/light-worked-examples.csv, kinds exposure and pwm_banding (ISO 2720 with K = 12.5; definitions; a rectangle swept by a rolling shutter).
public class ExposureTests
{
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Rows = ReferenceRows.Of("light-worked-examples.csv");

    [Theory]
    [InlineData("WE-094")]
    [InlineData("WE-095")]
    [InlineData("WE-096")]
    [InlineData("WE-098")]
    public void The_exposure_value_of_a_luminance_is_that_of_the_published_table(string id)
    {
        var row = Row(id);
        Assert.Equal(row.Input("ev100"), Exposure.ValueAtIso100(row.Number("value")), 1e-9);
    }

    [Fact]
    public void The_shutter_time_follows_the_standards_equation()
    {
        var row = Row("WE-104");
        Assert.Equal(row.Number("value"), Exposure.Seconds(row.Input("luminance_cd_m2"), row.Input("iso"), row.Input("f_number")), 1e-6);
    }

    [Theory]
    [InlineData("WE-107")]
    [InlineData("WE-108")]
    [InlineData("WE-109")]
    [InlineData("WE-110")]
    public void A_setting_has_the_exposure_value_of_its_definition(string id)
    {
        var row = Row(id);
        Assert.Equal(row.Number("value"), Exposure.ValueOfSetting(row.Input("f_number"), row.Input("time_s"), 100), 1e-5);
    }

    [Fact]
    public void Eightfold_sensitivity_is_three_stops() => Assert.Equal(Row("WE-111").Number("value"), Exposure.ValueOfSetting(16, 1, Row("WE-111").Input("iso")), 1e-9);

    [Fact]
    public void A_picture_burns_out_where_the_published_relation_says() => Assert.Equal(Row("WE-112").Number("value"), Exposure.BurnsOutAbove(Row("WE-112").Input("ev100")), 1e-9);

    [Fact]
    public void A_pane_worked_out_by_hand_has_its_exposure_value()
    {
        // 0.35 cd square on at 40 mm through a pane of 0.6: L = τ·I/(d²·π).
        var row = Row("WE-155");
        Assert.Equal(row.Number("value"), Exposure.ValueAtIso100(row.Input("tau_1") * row.Input("intensity_cd") / Math.Pow(row.Input("distance_m"), 2) / Math.PI), 1e-6);
    }

    [Theory]
    [InlineData("WE-113")]
    [InlineData("WE-114")]
    [InlineData("WE-115")]
    [InlineData("WE-116")]
    [InlineData("WE-120")]
    public void Bands_are_as_deep_as_worked_out(string id)
    {
        var row = Row(id);
        var shutter = row.InputText("exposure_s").Split('/').Select(p => double.Parse(p, System.Globalization.CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(row.Number("value"), Banding.Depth(row.Input("pwm_hz"), row.Input("duty_1"), shutter[0] / shutter[1]), 1e-4);
    }

    [Fact]
    public void A_steady_light_makes_no_bands() => Gen.Select(Gen.Double[1, 1000], Gen.Double[1e-4, 2]).Sample((hertz, seconds) => Banding.Depth(hertz, 1, seconds) < 1e-6);

    private static IReadOnlyDictionary<string, string> Row(string id) => Rows.Single(r => r["id"] == id);
}
