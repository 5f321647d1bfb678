namespace Duskwright.Circuits.Tests.Lamps;

public sealed class FilamentLawTests
{
    // Source: exponents 0.55 (current) and 3.5 (light) of lamp handbooks, from memory. By hand: 0.5^0.55 = 0.683, 0.5^3.5 = 0.0884;
    // 0.9^0.55 = 0.944, 0.9^3.5 = 0.692; 1.1^0.55 = 1.054, 1.1^3.5 = 1.396.
    [Theory]
    [InlineData(0.5, 0.683, 0.0884)]
    [InlineData(0.9, 0.944, 0.692)]
    [InlineData(1.0, 1.000, 1.000)]
    [InlineData(1.1, 1.054, 1.396)]
    public void Current_and_light_follow_the_handbook_exponents(double voltShare, double currentShare, double lightShare)
    {
        var point = UsualLamps.Filament.At(6 * voltShare, 0);
        Assert.Equal(currentShare, point.Amps / 0.05, 0.0006);
        Assert.Equal(lightShare, point.Light, 0.0006);
    }

    // Source: a cold filament has about a tenth of its hot resistance: common practice, no source.
    [Fact]
    public void A_cold_filament_has_about_a_tenth_of_its_hot_resistance()
    {
        var cold = 1 / UsualLamps.Filament.At(0, 0).Siemens;
        Assert.InRange(cold / (6 / 0.05), 0.07, 0.13);
    }

    [Fact]
    public void It_does_not_mind_which_way_round_it_is_connected() =>
        Gen.Select(Gen.Double[0.001, 12], Gen.Double[0, 100]).Sample((volts, ohms) =>
        {
            var (forward, backward) = (UsualLamps.Filament.At(volts, ohms), UsualLamps.Filament.At(-volts, ohms));
            return Math.Abs(forward.Amps + backward.Amps) < 1e-12 && Math.Abs(forward.Light - backward.Light) < 1e-12;
        });

    [Fact]
    public void The_slope_is_the_change_of_current_with_voltage() =>
        Gen.Select(Gen.Double[-12, 12], Gen.Double[0, 100]).Sample((volts, ohms) =>
        {
            const double Step = 1e-6;
            var measured = (UsualLamps.Filament.At(volts + Step, ohms).Amps - UsualLamps.Filament.At(volts - Step, ohms).Amps) / (2 * Step);
            var slope = UsualLamps.Filament.At(volts, ohms).Siemens;
            return slope > 0 && Math.Abs(measured - slope) <= 1e-5 * slope;
        });
}
