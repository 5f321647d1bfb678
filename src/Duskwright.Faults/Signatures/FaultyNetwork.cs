using System.Collections.Immutable;
using Duskwright.Circuits.Faulting;
using Duskwright.Circuits.Solving;
using Duskwright.Faults.Tagging;

namespace Duskwright.Faults.Signatures;

/// <summary>The list of faults that a network can have, and what each of them is in the circuit.</summary>
public static class FaultyNetwork
{
    /// <summary>Every single fault of a network.</summary>
    /// <param name="tagged">The network.</param>
    /// <returns>Pairs first, then lamps, then packs, each in its own order.</returns>
    public static ImmutableArray<Fault> Faults(TaggedNetwork tagged) =>
    [
        .. tagged.Pairs.SelectMany((p, i) => Each(p.Name, i, FaultKind.PairOpen, FaultKind.PairShorted, FaultKind.PairReversed, FaultKind.PairNicked)),
        .. tagged.Lamps.SelectMany((l, i) => Each(l.Name, i, FaultKind.LampJointOpen, FaultKind.LampShorted, FaultKind.LampReversed, FaultKind.LampDead)),
        .. tagged.Packs.SelectMany((p, i) => p.Law is null ? [] : Each(p.Name, i, FaultKind.CellFlat)),
    ];

    /// <summary>What a fault is in the circuit.</summary>
    /// <param name="tagged">The network without a fault.</param>
    /// <param name="sound">Its solution.</param>
    /// <param name="fault">The fault.</param>
    /// <returns>The changed parts.</returns>
    public static CircuitFault InCircuit(TaggedNetwork tagged, Solution sound, Fault fault)
    {
        var network = tagged.Network;
        return fault.Kind switch
        {
            FaultKind.PairOpen => FaultyPart.Open(network, tagged.Pairs[fault.Index].Wires[0]),
            FaultKind.PairShorted => FaultyPart.Bridged(fault.Place, tagged.Pairs[fault.Index].FarPlus, tagged.Pairs[fault.Index].FarMinus),
            FaultKind.PairReversed => FaultyPart.Reversed(network, fault.Place, tagged.Pairs[fault.Index].Lamps.Select(lamp => tagged.Lamps[lamp].Element)),
            FaultKind.PairNicked => FaultyPart.Nicked(network, tagged.Pairs[fault.Index].Wires[0], sound),
            FaultKind.LampJointOpen or FaultKind.LampDead => FaultyPart.Open(network, tagged.Lamps[fault.Index].Element),
            FaultKind.LampShorted => FaultyPart.Shorted(network, tagged.Lamps[fault.Index].Element),
            FaultKind.LampReversed => FaultyPart.Reversed(network, tagged.Lamps[fault.Index].Element),
            FaultKind.CellFlat when tagged.Packs[fault.Index] is { Law: { } law } pack => FaultyPart.CellFlat(network, pack.Source, law, pack.State),
            FaultKind.CellFlat => throw new ArgumentException($"{fault.Place} has no cells.", nameof(fault)),
            _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, "This kind of fault is not known."),
        };
    }

    private static IEnumerable<Fault> Each(string place, int index, params FaultKind[] kinds) => kinds.Select(k => new Fault(k, place, index));
}
