using System.Numerics;
using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Tests.Solving;

/// <summary>LEDs side by side against the law of a single one.</summary>
public sealed class LedBankTests
{
    private static readonly double[] Celsius = [-10, 0, 20, 40, 60];

    // 0.1 to 20 mA at five temperatures, without and with a resistor, either way round: each branch's current is that of its law's own
    // voltage, which VoltsAt says without solving anything. One unit in the last digits of the volts is 2e-14 of the current at 2 n·V_T.
    [Fact]
    public void Every_LED_of_a_bank_carries_the_current_whose_voltage_its_law_states()
    {
        foreach (var celsius in Celsius)
        {
            foreach (var law in new[] { UsualLamps.White, UsualLamps.Amber }.Select(l => l.AtCelsius(celsius)))
            {
                foreach (var ohms in new[] { 0.0, 47, 820 })
                {
                    for (var amps = 1e-4; amps <= 20e-3; amps *= 1.1)
                    {
                        var volts = law.VoltsAt(amps) + (amps * ohms);
                        Assert.Equal(1, (OfBank(law, ohms, volts, turned: false) - (LampLaw.LeakSiemens * volts)) / amps, 1e-12);
                        Assert.Equal(1, (-OfBank(law, ohms, -volts, turned: true) - (LampLaw.LeakSiemens * volts)) / amps, 1e-12);
                    }
                }
            }
        }
    }

    [Fact]
    public void A_bank_whose_lamps_all_differ_gives_each_its_own_current()
    {
        // More lamps than the vector unit has lanes, and not a whole number of vectors.
        var count = (3 * Vector<double>.Count) + 1;
        Element[] lamps = [.. Enumerable.Range(0, count).Select(i => new LampElement($"lamp {i}", 1, 0, UsualLamps.White with { RefVolts = 2.5 + (0.03 * i) }, 100 * i))];
        var network = new Network(2, [new SourceElement("pack", 1, 0, 4.5, 1e-9), .. lamps]);
        var solution = OperatingPoint.Solve(network);
        for (var i = 0; i < count; i++)
        {
            var lamp = (LampElement)lamps[i];
            Assert.Equal(1, solution.ElementAmps[i + 1] / lamp.Law.At(solution.NodeVolts[1], lamp.ResistorOhms).Amps, 1e-9);
        }
    }

    private static double OfBank(LedLaw law, double ohms, double volts, bool turned)
    {
        var network = new Network(2, [new SourceElement("pack", 1, 0, 1, 1), new LampElement("lamp", 1, 0, law, ohms)]);
        var plan = SeriesParallel.Of(network);
        var bank = new LedBank(plan);
        var values = new NetworkValues(network);
        if (turned)
        {
            values.Put(1, new LampElement("lamp", 0, 1, law, ohms));
        }

        bank.Load(0, values, 0);
        var along = plan.ElementSign[1];
        double[] portVolts = [.. Enumerable.Repeat(along * volts, plan.Ports.Length)];
        bank.Straighten(portVolts);
        var chainAmps = new double[plan.ChainPort.Length];
        bank.Read(portVolts, chainAmps);
        return along * chainAmps[0];
    }
}
