using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Tolerance;

namespace Duskwright.Circuits.Tests.Tolerance;

public sealed class FlickerDisturbanceTests
{
    [Fact]
    public void Without_shared_resistance_no_lamp_notices_the_others() =>
        Assert.All(FlickerDisturbance.Of(Street(1e-6, 5)), d => Assert.InRange(d.Difference, 0, 0.01));

    // Ohm's law: five lit flickering lamps lower the node by the shared resistance times their current, and the lamp of fixed voltage behind
    // its resistor loses that over its resistor: ΔI = R·ΔI_flicker/(R + r), where ΔI_flicker follows from the two node voltages.
    [Fact]
    public void A_steady_lamp_loses_what_the_flickering_ones_take_through_the_shared_resistance()
    {
        const double Shared = 2;
        const double Own = 100;
        var steady = UsualLamps.Fixed(2);
        var law = UsualLamps.Flickering;
        var network = new Network(2, [new SourceElement("pack", 1, 0, 3, Shared), new LampElement("steady", 1, 0, steady, Own), .. Enumerable.Range(0, 5).Select(i => new LampElement($"hearth {i}", 1, 0, law, 0))]);
        var disturbed = FlickerDisturbance.Of(network)[0];
        double Node(double light) => 2 + (light * 1e-3 * Own);
        var (low, high) = (Node(disturbed.LeastLight), Node(disturbed.MostLight));
        double Taken(double volts, bool lit) => 5 * law.InState(lit).At(volts, 0).Amps;
        Assert.Equal((3 - low) / Shared, ((low - 2) / Own) + Taken(low, true), 1e-5);
        Assert.Equal((3 - high) / Shared, ((high - 2) / Own) + Taken(high, false), 1e-5);
        Assert.True(disturbed.Difference > 5);
    }

    [Fact]
    public void More_flickering_neighbours_disturb_more_and_none_not_at_all()
    {
        Assert.Empty(FlickerDisturbance.Of(Street(1, 0)));
        var (three, ten) = (FlickerDisturbance.Of(Street(1, 3)), FlickerDisturbance.Of(Street(1, 10)));
        Assert.True(ten[0].Difference > three[0].Difference);
        Assert.All(ten, d => Assert.True(d.Ripple > 0 && d.MostLight > d.LeastLight));
        Assert.True(ten[0].Ripple < (ten[0].MostLight - ten[0].LeastLight) / ten[0].LeastLight);
    }

    private static Network Street(double sharedOhms, int flickering) => new(
        2,
        [
            new SourceElement("pack", 1, 0, 3, sharedOhms), new LampElement("room", 1, 0, UsualLamps.Amber, 120),
            .. Enumerable.Range(0, flickering).Select(i => new LampElement($"hearth {i}", 1, 0, UsualLamps.Flickering, 0)),
        ]);
}
