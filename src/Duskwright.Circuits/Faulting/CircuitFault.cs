using System.Collections.Immutable;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Faulting;

/// <summary>One fault of a circuit: what stands where sound parts stood.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Place">Name of the wire, pair, lamp or pack.</param>
/// <param name="Changes">Each changed part: its place among the elements, and what stands there now.</param>
/// <param name="Bridge">Two bare wires that touch, between nodes where no part stood; none for other faults.</param>
public sealed record CircuitFault(CircuitFaultKind Kind, string Place, ImmutableArray<(int Element, Element Now)> Changes, ResistorElement? Bridge = null)
{
    /// <summary>The circuit with this fault.</summary>
    /// <param name="network">The circuit without it.</param>
    /// <returns>A circuit of the same nodes; a bridge is its last element.</returns>
    public Network In(Network network)
    {
        var elements = network.Elements.ToBuilder();
        foreach (var (element, now) in Changes)
        {
            elements[element] = now;
        }

        if (Bridge is not null)
        {
            elements.Add(Bridge);
        }

        return new Network(network.NodeCount, elements.ToImmutable());
    }
}
