using Duskwright.Circuits.Metering;

namespace Duskwright.Circuits.Tests.Metering;

public sealed class MeterTests
{
    [Theory]
    [InlineData(0.19996, 0.2)]
    [InlineData(-0.1234, -0.1234)]
    [InlineData(0.12344, 0.1234)]
    public void A_display_shows_whole_counts(double value, double shown) =>
        Assert.Equal(shown, new MeterRange(0.2, 2000, 1, 0.01, 2).Show(value).Shown!.Value, 1e-9);

    [Fact]
    public void A_display_without_room_says_so()
    {
        Assert.Null(new MeterRange(0.2, 2000, 1, 0.01, 2).Show(0.20006).Shown);
        Assert.Equal((0.01 * 0.1) + 2.5e-4, new MeterRange(0.2, 2000, 1, 0.01, 2).Show(0.1).Error, 1e-12);
    }

    [Fact]
    public void The_smallest_range_that_fits_is_taken()
    {
        Assert.Equal(20e-3, Meter.Fitting(Meter.Usual.CurrentRanges, 2.1e-3).FullScale);
        Assert.Equal(2e-3, Meter.Fitting(Meter.Usual.CurrentRanges, 2e-3).FullScale);
        Assert.Equal(10, Meter.Fitting(Meter.Usual.CurrentRanges, 11).FullScale);
    }

    // Source: common practice, no source: a cheap meter's current ranges lose about a fifth of a volt at full scale.
    [Fact]
    public void The_usual_meter_loses_about_a_fifth_of_a_volt_at_full_scale() =>
        Assert.All(Meter.Usual.CurrentRanges, r => Assert.InRange(r.FullScale * r.Ohms, 0.15, 0.35));
}
