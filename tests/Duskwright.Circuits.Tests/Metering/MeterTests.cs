using Duskwright.Circuits.Metering;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Tests.Metering;

public sealed class MeterTests
{
    // Source: T. R. Kuphaldt, Lessons in Electric Circuits, vol. I, ch. 8, ammeter impact on the measured circuit, from memory: 2 V across 3 Ω and
    // 1.5 Ω side by side; an ammeter of 0.5 Ω in one branch reads 571.43 mA instead of 666.7 mA, in the other 1 A instead of 1.333 A.
    [Theory]
    [InlineData(1, 0.6667, 0.57143)]
    [InlineData(2, 1.3333, 1.0)]
    public void An_ammeter_takes_its_burden_from_what_it_reads(int branch, double free, double metered)
    {
        var network = new Network(2, [new SourceElement("supply", 1, 0, 2, 1e-6), new ResistorElement("three", 1, 0, 3), new ResistorElement("one and a half", 1, 0, 1.5)]);
        var value = MeterInCircuit.Current(network, branch, new MeterRange(10, 100_000, 0.5, 0, 0));
        Assert.Equal(free, value.Undisturbed, 5e-5);
        Assert.Equal(metered, value.WithMeter, 5e-6);
        Assert.Equal(metered, value.Reading.Shown!.Value, 1e-4);
    }

    // Ohm's law by hand: two of 1 MΩ across 10 V with a meter of 1 MΩ on one: 10·0.5/(1 + 0.5) = 3.333 V instead of 5 V.
    [Fact]
    public void A_voltmeter_loads_what_has_much_resistance()
    {
        var network = new Network(3, [new SourceElement("supply", 1, 0, 10, 1e-6), new ResistorElement("upper", 1, 2, 1e6), new ResistorElement("lower", 2, 0, 1e6)]);
        var value = MeterInCircuit.Voltage(network, 2, 0, new MeterRange(20, 2000, 1e6, 0, 0));
        Assert.Equal(5, value.Undisturbed, 1e-5);
        Assert.Equal(10.0 / 3, value.WithMeter, 1e-5);
        Assert.Equal(3.33, value.Reading.Shown!.Value, 1e-9);
    }

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

    // Source: common practice, no source: the diode range reads red and amber LEDs; white ones need more than a cheap meter has and only glimmer.
    [Fact]
    public void The_diode_range_reads_amber_and_says_over_range_for_white()
    {
        var (amberVolts, amber) = MeterInCircuit.DiodeRange(Meter.Usual, UsualLamps.Amber);
        Assert.InRange(amberVolts!.Value, 1.6, 1.8);
        Assert.InRange(amber.LitAmps, 0.2e-3, 0.5e-3);
        var (whiteVolts, white) = MeterInCircuit.DiodeRange(Meter.Usual, UsualLamps.White);
        Assert.Null(whiteVolts);
        Assert.InRange(white.LitAmps, 0.02e-3, 0.2e-3);
    }

    // Source: common practice, no source: a cheap meter's current ranges lose about a fifth of a volt at full scale.
    [Fact]
    public void The_usual_meter_loses_about_a_fifth_of_a_volt_at_full_scale() =>
        Assert.All(Meter.Usual.CurrentRanges, r => Assert.InRange(r.FullScale * r.Ohms, 0.15, 0.35));
}
