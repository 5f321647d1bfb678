using System.Collections.Immutable;
using Duskwright.Circuits.Networks;
using Duskwright.Faults.Tagging;

namespace Duskwright.Faults.Signatures;

/// <summary>A network with one fault built into it, and the list of faults that a network can have.</summary>
public static class FaultyNetwork
{
    // A gap in the air: at 12 V it passes 12 nA.
    private const double OpenOhms = 1e9;

    // Two bare wires that touch, or a solder bridge; usual, common practice, no source.
    private const double TouchOhms = 0.05;

    /// <summary>Every single fault of a network.</summary>
    /// <param name="tagged">The network.</param>
    /// <returns>Pairs first, then lamps, then packs, each in its own order.</returns>
    public static ImmutableArray<Fault> Faults(TaggedNetwork tagged) =>
    [
        .. tagged.Pairs.SelectMany((p, i) => Each(p.Name, i, FaultKind.PairOpen, FaultKind.PairShorted, FaultKind.PairReversed)),
        .. tagged.Lamps.SelectMany((l, i) => Each(l.Name, i, FaultKind.LampJointOpen, FaultKind.LampShorted, FaultKind.LampReversed, FaultKind.LampDead)),
        .. tagged.Packs.SelectMany((p, i) => p.Law is null ? [] : Each(p.Name, i, FaultKind.CellFlat)),
    ];

    /// <summary>The network with one fault.</summary>
    /// <param name="tagged">The network without a fault.</param>
    /// <param name="fault">The fault.</param>
    /// <returns>A network of the same nodes; a short adds an element at the end.</returns>
    public static Network With(TaggedNetwork tagged, Fault fault)
    {
        var elements = tagged.Network.Elements;
        return new Network(tagged.Network.NodeCount, fault.Kind switch
        {
            FaultKind.PairOpen => Opened(elements, tagged.Pairs[fault.Index].Wires[0]),
            FaultKind.PairShorted => elements.Add(
                new ResistorElement($"short of {fault.Place}", tagged.Pairs[fault.Index].FarPlus, tagged.Pairs[fault.Index].FarMinus, TouchOhms)),
            FaultKind.PairReversed => tagged.Pairs[fault.Index].Lamps.Aggregate(elements, (e, lamp) => Reversed(e, tagged.Lamps[lamp].Element)),
            FaultKind.LampJointOpen or FaultKind.LampDead => Opened(elements, tagged.Lamps[fault.Index].Element),
            FaultKind.LampShorted => Shorted(elements, tagged.Lamps[fault.Index].Element),
            FaultKind.LampReversed => Reversed(elements, tagged.Lamps[fault.Index].Element),
            FaultKind.CellFlat => WithFlatCell(elements, tagged.Packs[fault.Index]),
            _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, "This kind of fault is not known."),
        });
    }

    private static IEnumerable<Fault> Each(string place, int index, params FaultKind[] kinds) => kinds.Select(k => new Fault(k, place, index));

    private static ImmutableArray<Element> Opened(ImmutableArray<Element> elements, int at) =>
        elements.SetItem(at, new ResistorElement(elements[at].Name, elements[at].A, elements[at].B, OpenOhms));

    private static ImmutableArray<Element> Shorted(ImmutableArray<Element> elements, int at)
    {
        var lamp = (LampElement)elements[at];
        return elements.SetItem(at, new ResistorElement(lamp.Name, lamp.A, lamp.B, lamp.ResistorOhms + TouchOhms));
    }

    private static ImmutableArray<Element> Reversed(ImmutableArray<Element> elements, int at)
    {
        var lamp = (LampElement)elements[at];
        return elements.SetItem(at, new LampElement(lamp.Name, lamp.Cathode, lamp.Anode, lamp.Law, lamp.ResistorOhms));
    }

    // Rows side by side, one of them with the last point of the curve for one of its cells, are one source by Millman's theorem.
    private static ImmutableArray<Element> WithFlatCell(ImmutableArray<Element> elements, PackTag pack)
    {
        var law = pack.Law ?? throw new ArgumentException($"{pack.Name} has no cells.", nameof(pack));
        var (goodVolts, goodOhms) = law.Cell.At(pack.State);
        var flat = law.Cell.Curve[^1];
        var (rowVolts, rowOhms) = (law.Series * goodVolts, law.Series * goodOhms);
        var (weakVolts, weakOhms) = (rowVolts - goodVolts + flat.OpenVolts, rowOhms - goodOhms + flat.Ohms);
        var siemens = ((law.Parallel - 1) / rowOhms) + (1 / weakOhms);
        var volts = (((law.Parallel - 1) * rowVolts / rowOhms) + (weakVolts / weakOhms)) / siemens;
        var source = (SourceElement)elements[pack.Source];
        return elements.SetItem(pack.Source, source with { OpenVolts = volts, Ohms = (1 / siemens) + law.ExtraOhms });
    }
}
