using Duskwright.Circuits.Faulting;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Tests.Faulting;

/// <summary>A pair whose two wires are swapped at its far end.</summary>
internal static class PairSwap
{
    /// <summary>The fault: all lamps behind the pair turned where nothing else holds them, otherwise the two wires joined the other way.</summary>
    internal static CircuitFault Of(Network network, WirePair pair, ILookup<int, int> elementsAt) =>
        LampsBehind(network, pair, elementsAt) is { } lamps
            ? FaultyPart.Reversed(network, pair.Name, lamps)
            : new CircuitFault(
                CircuitFaultKind.PairSwapped,
                pair.Name,
                [(pair.PlusWire, Joined(network.Elements[pair.PlusWire], pair.FarPlus, pair.FarMinus)), (pair.MinusWire, Joined(network.Elements[pair.MinusWire], pair.FarMinus, pair.FarPlus))]);

    /// <summary>Which elements are at each node.</summary>
    internal static ILookup<int, int> ElementsAt(Network network) =>
        Enumerable.Range(0, network.Elements.Length).SelectMany(i => new[] { (Node: network.Elements[i].A, i), (Node: network.Elements[i].B, i) }).ToLookup(x => x.Node, x => x.i);

    private static Element Joined(Element wire, int from, int to) => wire.A == from ? wire with { A = to } : wire with { B = to };

    // None where a supply or the reference can be reached another way than through the pair.
    private static List<int>? LampsBehind(Network network, WirePair pair, ILookup<int, int> elementsAt)
    {
        var (lamps, seen, open) = (new List<int>(), new HashSet<int> { pair.FarPlus, pair.FarMinus }, new Stack<int>([pair.FarPlus, pair.FarMinus]));
        while (open.TryPop(out var node))
        {
            foreach (var i in elementsAt[node].Where(i => i != pair.PlusWire && i != pair.MinusWire))
            {
                var element = network.Elements[i];
                var other = element.A == node ? element.B : element.A;
                if (other == 0 || element is SourceElement)
                {
                    return null;
                }

                if (element is LampElement && element.A == node)
                {
                    lamps.Add(i);
                }

                if (seen.Add(other))
                {
                    open.Push(other);
                }
            }
        }

        return lamps;
    }
}
