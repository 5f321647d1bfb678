using System.Collections.Immutable;
using Duskwright.Circuits.Metering;
using Duskwright.Circuits.Networks;

namespace Duskwright.Faults.Testing;

/// <summary>A circuit as it is put together for a test, with the place where a meter stands in line.</summary>
/// <param name="Network">The circuit without the meter.</param>
/// <param name="ReadAt">Place among its elements of the part whose current is read.</param>
/// <param name="Factors">What is not known exactly about its parts.</param>
public sealed record TestCircuit(Network Network, int ReadAt, ImmutableArray<Factor> Factors)
{
    /// <summary>With a meter in line: its burden adds to the resistance of the part it stands beside.</summary>
    /// <param name="range">The range it is set to.</param>
    /// <returns>The circuit while it is read.</returns>
    /// <exception cref="ArgumentException">The part is of a kind no meter is put beside.</exception>
    public TestCircuit With(MeterRange range)
    {
        Element Burdened(Element element) => element switch
        {
            ResistorElement r => r with { Ohms = r.Ohms + range.Ohms },
            LampElement l => l with { ResistorOhms = l.ResistorOhms + range.Ohms },
            SourceElement s => s with { Ohms = s.Ohms + range.Ohms },
            _ => throw new ArgumentException($"{element.Name} is of a kind no meter is put beside.", nameof(range)),
        };
        ImmutableArray<(int Element, Element Now)> Parts(ImmutableArray<(int Element, Element Now)> parts) =>
            [.. parts.Select(p => p.Element == ReadAt ? (p.Element, Burdened(p.Now)) : p)];
        return this with
        {
            Network = new Network(Network.NodeCount, Network.Elements.SetItem(ReadAt, Burdened(Network.Elements[ReadAt]))),
            Factors = [.. Factors.Select(f => f with { Lowered = Parts(f.Lowered), Raised = Parts(f.Raised) })],
        };
    }

    /// <summary>With the volts at the supply known from a second meter, so that neither cells nor their resistance matter.</summary>
    /// <param name="source">Place of the supply among the elements.</param>
    /// <param name="volts">The volts read between its ends, V.</param>
    /// <param name="errorVolts">How far off the reading may be either way, V.</param>
    /// <returns>The circuit on just those volts; nothing else about the supply is left open.</returns>
    public TestCircuit AtVolts(int source, double volts, double errorVolts)
    {
        var supply = (SourceElement)Network.Elements[source];
        SourceElement Stiff(double v) => supply with { OpenVolts = v, Ohms = StiffOhms };
        var read = new Factor($"volts read at {supply.Name}", [(source, Stiff(volts - errorVolts))], [(source, Stiff(volts + errorVolts))], ErrorDeviations, Lasts: false);
        return this with
        {
            Network = new Network(Network.NodeCount, Network.Elements.SetItem(source, Stiff(volts))),
            Factors = [.. Factors.Where(f => !f.Raised.Any(p => p.Element == source)), read],
        };
    }

    /// <summary>With one lamp out, be it open or the wrong way round: it carries nothing either way.</summary>
    /// <param name="lamp">Place of the lamp among the elements.</param>
    /// <returns>The circuit without it.</returns>
    public TestCircuit Without(int lamp) => this with
    {
        Network = Circuits.Faulting.FaultyPart.Open(Network, lamp).In(Network),
        Factors = [.. Factors
            .Select(f => f with { Lowered = [.. f.Lowered.Where(p => p.Element != lamp)], Raised = [.. f.Raised.Where(p => p.Element != lamp)] })
            .Where(f => f.Raised.Length > 0)],
    };

    // A maker's limit of error counts as two deviations.
    internal const double ErrorDeviations = 2;

    // Lost at an ampere: a microvolt.
    private const double StiffOhms = 1e-6;
}
