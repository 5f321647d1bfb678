using Duskwright.Circuits.Lamps;

namespace Duskwright.Circuits.Tests.Lamps;

/// <summary>What temperature, droop, over-voltage and the states of a flickering lamp change.</summary>
public sealed class LampChangesTests
{
    // Source: V. K. Khanna, Fundamentals of Solid-State Lighting, eqs. 14.1–14.3, tests/Reference/worked-examples.csv VFT-01: 3.0 V at 25 °C and
    // −3 mV/K are 2.7 V at 125 °C, and 0.9 W become 0.81 W.
    [Fact]
    public void A_hot_white_LED_has_the_published_voltage_and_power()
    {
        var rows = ReferenceRows.Of("worked-examples.csv").Where(r => r["example_id"] == "VFT-01").ToDictionary(r => r["quantity"]);
        var cold = new LedLaw(3.0, 0.3, 2, 1, 298.15);
        var hot = cold.AtCelsius(125);
        Assert.Equal(rows["vf"].Number("expected_value"), hot.VoltsAt(0.3), 1e-9);
        Assert.Equal(rows["power_hot"].Number("expected_value"), 0.3 * hot.VoltsAt(0.3), rows["power_hot"].Number("abs_tolerance"));
    }

    [Fact]
    public void Droop_halves_the_light_of_each_ampere_at_its_current()
    {
        var lamp = UsualLamps.White with { DroopAmps = 0.1 };
        Assert.Equal(1, lamp.LightAt(lamp.RefAmps), 1e-12);
        var perAmpere = lamp.LightAt(1e-9) / 1e-9;
        Assert.Equal(0.5, lamp.LightAt(0.1) / 0.1 / perAmpere, 1e-6);
        Assert.Equal(lamp.At(4.5, 100).LitAmps / lamp.RefAmps * 1.01 / (1 + (lamp.At(4.5, 100).LitAmps / 0.1)), lamp.At(4.5, 100).Light, 1e-12);
    }

    [Fact]
    public void Without_droop_light_is_in_step_with_current() => Assert.Equal(20, UsualLamps.White.LightAt(20e-3), 1e-9);

    [Fact]
    public void A_filament_lamp_at_its_rating_makes_its_rated_heat() =>
        Assert.Equal(6 * 0.05, UsualLamps.Filament.Watts(6), 1e-4);

    [Fact]
    public void A_flickering_lamps_mean_lies_between_its_states_by_the_share_lit()
    {
        var law = UsualLamps.Flickering;
        var (lit, dark, mean) = (law.InState(true).At(3, 20), law.InState(false).At(3, 20), law.At(3, 20));
        Assert.Equal((law.OnShare * lit.Amps) + ((1 - law.OnShare) * dark.Amps), mean.Amps, 1e-12);
        Assert.Equal(0, dark.Light);
        Assert.Equal(mean.LitAmps, lit.Amps, 1e-12);
    }
}
