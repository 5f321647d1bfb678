using System.Globalization;
using Duskwright.Light.Flicker;

namespace Duskwright.Light.Tests.Flicker;

public class FlickerLimitsTests
{
    public static TheoryData<string> Rows => [.. ReferenceRows.Of("flicker-checks.csv").Select(r => r["id"])];

    // Source: tests/Reference/flicker-checks.csv (rules of IEEE 1789, read second-hand; those marked MEMORY are from memory).
    [Theory]
    [MemberData(nameof(Rows))]
    public void Limits_and_classes_are_those_of_the_table(string id)
    {
        var row = ReferenceRows.Of("flicker-checks.csv").Single(r => r["id"] == id);
        var hertz = row.Number("frequency_hz");
        switch (row["quantity"])
        {
            case "class":
                Assert.Equal(row["expected"] switch { "no-effect" => FlickerRisk.NoEffect, "low-risk" => FlickerRisk.Low, _ => FlickerRisk.AboveLow }, FlickerLimits.Of(hertz, row.Number("modulation_percent")));
                break;
            case "low-risk modulation limit":
                Assert.Equal(row.Number("expected"), FlickerLimits.LowRiskPercent(hertz), row.Number("expected") * row.Number("tol_rel"));
                break;
            default:
                Assert.Equal("no-effect modulation limit", row["quantity"]);
                Assert.Equal(row.Number("expected"), FlickerLimits.NoEffectPercent(hertz), row.Number("expected") * row.Number("tol_rel"));
                break;
        }
    }

    // Source: tests/Reference/flicker-limits.csv, rules FL-R08 and FL-R10 to FL-R12 (Epilepsy Society; w3c/wcag).
    [Fact]
    public void The_flash_limits_are_those_read_in_their_sources()
    {
        var rules = ReferenceRows.Of("flicker-limits.csv").ToDictionary(r => r["id"], StringComparer.Ordinal);
        Assert.Equal(FlashLimits.MostSteradians, rules["FL-R12"].Number("coefficient"));
        Assert.Equal(FlashLimits.MostFlashesPerSecond, rules["FL-R11"].Number("coefficient"));
        Assert.Equal(FlashLimits.LeastProvokingHertz, rules["FL-R08"].Number("from_hz"));
        Assert.Equal(FlashLimits.MostProvokingHertz, rules["FL-R10"].Number("to_hz"));
        Assert.Contains(FlashLimits.MostSteradians.ToString(CultureInfo.InvariantCulture), rules["FL-R12"]["limit"], StringComparison.Ordinal);
    }

    // Source: tests/Reference/light-worked-examples.csv, WE-138, WE-139 and WE-141.
    [Theory]
    [InlineData("WE-138", 0.5)]
    [InlineData("WE-139", 1)]
    public void A_windows_solid_angle_is_its_area_over_the_distance_squared(string id, double metres)
    {
        var row = ReferenceRows.Of("light-worked-examples.csv").Single(r => r["id"] == id);
        Assert.Equal(row.Number("value"), FlashLimits.Steradians(0.01 * 0.015, metres, 1), row.Number("value") * row.Number("tol_rel"));
    }

    [Fact]
    public void Six_windows_may_flash_together_at_four_tenths_of_a_metre_and_seven_may_not()
    {
        var most = (int)ReferenceRows.Of("light-worked-examples.csv").Single(r => r["id"] == "WE-141").Number("value");
        var one = FlashLimits.Steradians(0.01 * 0.015, 0.4, 1);
        Assert.True(FlashLimits.Within(most * one, 12));
        Assert.False(FlashLimits.Within((most + 1) * one, 12));
        Assert.True(FlashLimits.Within((most + 1) * one, 3));
    }

    // Source: tests/Reference/flicker-limits.csv, note: decorative candle flicker fails the numeric limits by design.
    [Fact]
    public void A_flickering_lamp_is_above_the_low_risk_limit_at_every_rate_it_is_sold_for()
    {
        var rate = ReferenceRows.Of("flickering-led.csv").Single(r => r["quantity"] == "state_rate");
        Assert.All(["low", "typical", "high"], column => Assert.Equal(FlickerRisk.AboveLow, FlickerLimits.Of(rate.Number(column), 90)));
    }
}
