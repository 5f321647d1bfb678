using Duskwright.Circuits.Metering;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Faults.Testing;

namespace Duskwright.Faults.Tests.Testing;

public class TestCircuitTests
{
    // Source: T. R. Kuphaldt, Lessons in Electric Circuits, vol. I, ch. 8, ammeter impact on the measured circuit, from memory: 2 V across 3 Ω and
    // 1.5 Ω side by side; an ammeter of 0.5 Ω in one branch reads 571.43 mA instead of 666.7 mA, in the other 1 A instead of 1.333 A.
    [Theory]
    [InlineData(1, 0.6667, 0.57143)]
    [InlineData(2, 1.3333, 1.0)]
    public void An_ammeter_takes_its_burden_from_what_it_reads(int branch, double free, double metered)
    {
        var circuit = new TestCircuit(
            new Network(2, [new SourceElement("supply", 1, 0, 2, 1e-6), new ResistorElement("three", 1, 0, 3), new ResistorElement("one and a half", 1, 0, 1.5)]), branch, []);
        double Amps(TestCircuit c) => OperatingPoint.Solve(c.Network).ElementAmps[c.ReadAt];
        Assert.Equal(free, Amps(circuit), 5e-5);
        Assert.Equal(metered, Amps(circuit.With(new MeterRange(10, 100_000, 0.5, 0, 0))), 5e-6);
    }
}
