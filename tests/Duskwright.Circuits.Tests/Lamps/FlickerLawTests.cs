namespace Duskwright.Circuits.Tests.Lamps;

public sealed class FlickerLawTests
{
    // Source: tests/Reference/flickering-led.csv (common practice, no source): typical 18 mA lit and 1 mA dark at 3 V, lit 0.65 of the time.
    // By hand: 0.65 × 18 + 0.35 × 1 = 12.05 mA.
    [Fact]
    public void Its_mean_current_is_the_mean_of_both_states()
    {
        var rows = ReferenceRows.Of("flickering-led.csv").ToDictionary(r => r["quantity"], r => r.Number("typical"));
        Assert.Equal(18, rows["current_on_at_3v"]);
        Assert.Equal(1, rows["current_off_at_3v"]);
        Assert.Equal(0.65, rows["duty_mean"]);
        var point = UsualLamps.Flickering.At(3, 0);
        Assert.Equal(12.05e-3, point.Amps, 1e-8);
        Assert.Equal(18e-3, point.LitAmps, 1e-8);
    }

    [Fact]
    public void Its_light_is_the_lit_states_share_and_not_the_light_at_mean_current()
    {
        var law = UsualLamps.Flickering;
        var point = law.At(4.5, 150);
        var litLight = law.Lit.At(point.LampVolts, 0).Light;
        Assert.Equal(0.65 * litLight, point.Light, 1e-9);
        Assert.True(point.Light < point.Amps / law.Lit.RefAmps);
    }

    // Source: tests/Reference/flickering-led.csv, supply_least_v typical 2.0 V.
    [Fact]
    public void Below_its_least_voltage_it_stays_dark()
    {
        var law = UsualLamps.Flickering;
        Assert.True(law.At(1.8, 0).LitAmps < 0.01 * law.Lit.At(1.8, 0).Amps);
        Assert.True(law.At(2.2, 0).LitAmps > 0.99 * law.Lit.At(2.2, 0).Amps);
    }

    [Fact]
    public void More_volts_give_more_current_behind_any_resistor() =>
        Gen.Select(Gen.Double[-12, 12], Gen.Double[1e-3, 1], Gen.Double[0, 2000]).Sample((volts, more, ohms) =>
            UsualLamps.Flickering.At(volts + more, ohms).Amps > UsualLamps.Flickering.At(volts, ohms).Amps);

    [Fact]
    public void The_resistor_takes_what_the_lamp_leaves_in_the_lit_state() =>
        Gen.Select(Gen.Double[-12, 12], Gen.Double[1, 2000]).Sample((volts, ohms) =>
        {
            var point = UsualLamps.Flickering.At(volts, ohms);
            return Math.Abs(point.LampVolts + (ohms * point.LitAmps) - volts) < 1e-9;
        });

    // Just where the driver lets go the current bends twice, and Newton alone runs round in a ring there.
    [Theory]
    [InlineData(2.127659574468085, 193)]
    [InlineData(2.1, 1023.2222222222222)]
    public void Where_the_driver_lets_go_the_voltages_still_add_up(double volts, double ohms)
    {
        var point = UsualLamps.Flickering.At(volts, ohms);
        Assert.Equal(volts, point.LampVolts + (ohms * point.LitAmps), 1e-12);
    }
}
