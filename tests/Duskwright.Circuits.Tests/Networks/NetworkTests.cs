using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Tests.Networks;

public sealed class NetworkTests
{
    [Theory]
    [InlineData(0, 1, 0.0, "tail has 0 Ω; a finite resistance from 1E-09 Ω is allowed.")]
    [InlineData(0, 1, double.NaN, "tail has NaN Ω; a finite resistance from 1E-09 Ω is allowed.")]
    [InlineData(0, 2, 1.0, "tail joins nodes 0 and 2; two different nodes of 0 to 1 are allowed.")]
    [InlineData(-1, 1, 1.0, "tail joins nodes -1 and 1; two different nodes of 0 to 1 are allowed.")]
    [InlineData(1, 1, 1.0, "tail joins nodes 1 and 1; two different nodes of 0 to 1 are allowed.")]
    public void A_wire_that_cannot_be_is_refused_by_name(int a, int b, double ohms, string sentence)
    {
        var thrown = Assert.Throws<ArgumentException>(() => new Network(2, [new ResistorElement("tail", a, b, ohms)]));
        Assert.StartsWith(sentence, thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lamp_may_be_without_a_resistor_but_not_below_none()
    {
        Assert.Single(new Network(2, [new LampElement("attic", 1, 0, UsualLamps.White, 0)]).Elements);
        var thrown = Assert.Throws<ArgumentException>(() => new Network(2, [new LampElement("attic", 1, 0, UsualLamps.White, -1)]));
        Assert.StartsWith("attic has -1 Ω; a finite resistance from 0 Ω is allowed.", thrown.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.PositiveInfinity, 1)]
    [InlineData(5, 0)]
    [InlineData(5, double.NaN)]
    public void A_supply_needs_a_finite_voltage_and_a_positive_limit(double volts, double limit)
    {
        var thrown = Assert.Throws<ArgumentException>(() => new Network(2, [new SourceElement("adaptor", 1, 0, volts, 1, limit)]));
        Assert.StartsWith("adaptor has", thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_network_has_a_reference() => Assert.Throws<ArgumentException>(() => new Network(0, []));
}
