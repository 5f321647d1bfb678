using Duskwright.Light.Lamps;

namespace Duskwright.Light.Tests.Lamps;

public class LampAgeTests
{
    // Source: tests/Reference/light-worked-examples.csv, kind lumen_maintenance (IES TM-21 as an IES article gives it).
    [Theory]
    [InlineData("WE-134")]
    [InlineData("WE-135")]
    public void Hours_to_seven_tenths_follow_the_exponential_law(string id)
    {
        var row = ReferenceRows.Of("light-worked-examples.csv").Single(r => r["id"] == id);
        Assert.Equal(row.Number("value"), LampAge.HoursTo(row.Input("b_1"), row.Input("alpha_per_h"), LampAge.SpentShare), row.Number("value") * row.Number("tol_rel"));
    }

    [Fact]
    public void The_most_hours_claimed_lie_between_the_two_longest_reports()
    {
        // 36 000 h (WE-136) and 60 000 h are what six times the usual tests allow to report.
        var report = ReferenceRows.Of("light-worked-examples.csv").Single(r => r["id"] == "WE-136").Number("value");
        Assert.InRange(LampAge.LedHours.Most, report, 60000);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(10000, 0.7)]
    [InlineData(20000, 0.49)]
    public void Light_left_falls_by_the_same_share_in_equal_times(double hours, double share) => Assert.Equal(share, LampAge.ShareLeft(hours, 10000), 1e-12);

    // Source: usual exponent of lamp handbooks, from memory: a twentieth less voltage nearly doubles the life, a twentieth more halves it nearly.
    [Theory]
    [InlineData(0.95, 1.85)]
    [InlineData(1.05, 0.557)]
    public void A_filament_lives_longer_on_less_voltage(double share, double factor) => Assert.Equal(factor, LampAge.FilamentLifeFactor(share), 0.001 + (0.002 * factor));
}
