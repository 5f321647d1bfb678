using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Metering;

/// <summary>What a meter in a circuit shows, what it changes by being there included.</summary>
public static class MeterInCircuit
{
    /// <summary>Current with the circuit opened at one element and the meter put in between.</summary>
    /// <param name="network">The network.</param>
    /// <param name="element">Place of the element among those of the network.</param>
    /// <param name="range">A current range.</param>
    /// <returns>Current of the element, A, in its own direction.</returns>
    /// <exception cref="InvalidOperationException">The network has no solution.</exception>
    public static MeteredValue Current(Network network, int element, MeterRange range)
    {
        Element broken = network.Elements[element] switch
        {
            ResistorElement r => r with { Ohms = r.Ohms + range.Ohms },
            LampElement l => l with { ResistorOhms = l.ResistorOhms + range.Ohms },
            SourceElement s => s with { Ohms = s.Ohms + range.Ohms },
            var other => throw new ArgumentException($"{other.Name} is of a kind no meter is put beside.", nameof(element)),
        };
        var free = Solved(network).ElementAmps[element];
        var metered = Solved(new Network(network.NodeCount, network.Elements.SetItem(element, broken))).ElementAmps[element];
        return new MeteredValue(free, metered, range.Show(metered));
    }

    /// <summary>Voltage between two nodes with the meter's leads on them.</summary>
    /// <param name="network">The network.</param>
    /// <param name="plus">Node at the red lead.</param>
    /// <param name="minus">Node at the black lead.</param>
    /// <param name="range">A voltage range.</param>
    /// <returns>Voltage, V.</returns>
    /// <exception cref="InvalidOperationException">The network has no solution.</exception>
    public static MeteredValue Voltage(Network network, int plus, int minus, MeterRange range)
    {
        double Volts(Network n)
        {
            var nodeVolts = Solved(n).NodeVolts;
            return nodeVolts[plus] - nodeVolts[minus];
        }

        var metered = Volts(new Network(network.NodeCount, network.Elements.Add(new ResistorElement("meter", plus, minus, range.Ohms))));
        return new MeteredValue(Volts(network), metered, range.Show(metered));
    }

    /// <summary>What the diode range shows with its leads on a lamp out of circuit.</summary>
    /// <param name="meter">The meter.</param>
    /// <param name="lamp">The lamp.</param>
    /// <param name="resistorOhms">Resistance in its lead, Ω, zero or more.</param>
    /// <returns>
    /// Voltage between the leads, V, and the lamp's point then. When it comes within a tenth of the open leads' voltage the display says over
    /// range, though the lamp may glow: most white LEDs do so on a meter with less than 3 V.
    /// </returns>
    public static (double? Volts, LampPoint Lamp) DiodeRange(Meter meter, LampLaw lamp, double resistorOhms = 0)
    {
        const double NearOpenShare = 0.9;
        var inside = meter.DiodeOpenVolts / meter.DiodeAmps;
        var point = lamp.At(meter.DiodeOpenVolts, resistorOhms + inside);
        var volts = meter.DiodeOpenVolts - (point.Amps * inside);
        return (volts < NearOpenShare * meter.DiodeOpenVolts ? volts : null, point);
    }

    private static Solution Solved(Network network)
    {
        var solution = OperatingPoint.Solve(network);
        return solution.Status == SolveStatus.Solved
            ? solution
            : throw new InvalidOperationException($"The circuit has no solution at {solution.FailedAt} ({solution.Status}).");
    }
}
