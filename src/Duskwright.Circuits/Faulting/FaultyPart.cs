using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Faulting;

/// <summary>The single faults of each kind of part.</summary>
public static class FaultyPart
{
    // A gap in the air: at 12 V it passes 12 nA.
    private const double OpenOhms = 1e9;

    // Two bare wires that touch, or a solder bridge; usual, common practice, no source.
    private const double TouchOhms = 0.05;

    // A nick shows only once its resistance comes near that of all it feeds, where its lamps are dim and not dark; assumed.
    private const double NickShare = 0.5;

    /// <summary>A joint of a wire, or in a lamp's own branch, is open.</summary>
    /// <param name="network">The circuit.</param>
    /// <param name="element">The wire or lamp.</param>
    /// <returns>The fault.</returns>
    public static CircuitFault Open(Network network, int element)
    {
        var sound = network.Elements[element];
        return new(sound is LampElement ? CircuitFaultKind.LampOpen : CircuitFaultKind.JointOpen, sound.Name, [(element, new ResistorElement(sound.Name, sound.A, sound.B, OpenOhms))]);
    }

    /// <summary>A wire hangs by a strand that has gone bad, so that it has half as much resistance as all that it feeds.</summary>
    /// <param name="network">The circuit.</param>
    /// <param name="wire">The wire.</param>
    /// <param name="sound">The circuit's solution without a fault.</param>
    /// <returns>The fault: the highest supply voltage over the wire's current is what all it feeds has for resistance.</returns>
    public static CircuitFault Nicked(Network network, int wire, Solution sound)
    {
        var whole = (ResistorElement)network.Elements[wire];
        var volts = network.Elements.OfType<SourceElement>().Select(s => Math.Abs(s.OpenVolts)).DefaultIfEmpty(0).Max();
        var ohms = Math.Min(OpenOhms, NickShare * volts / Math.Max(Math.Abs(sound.ElementAmps[wire]), volts / OpenOhms));
        return new(CircuitFaultKind.WireNicked, whole.Name, [(wire, whole with { Ohms = whole.Ohms + ohms })]);
    }

    /// <summary>The leads of a lamp touch, behind its resistor where it has one.</summary>
    /// <param name="network">The circuit.</param>
    /// <param name="lamp">The lamp.</param>
    /// <returns>The fault.</returns>
    public static CircuitFault Shorted(Network network, int lamp)
    {
        var sound = (LampElement)network.Elements[lamp];
        return new(CircuitFaultKind.LampShorted, sound.Name, [(lamp, new ResistorElement(sound.Name, sound.A, sound.B, sound.ResistorOhms + TouchOhms))]);
    }

    /// <summary>A lamp is the wrong way round.</summary>
    /// <param name="network">The circuit.</param>
    /// <param name="lamp">The lamp.</param>
    /// <returns>The fault.</returns>
    public static CircuitFault Reversed(Network network, int lamp) => new(CircuitFaultKind.LampReversed, network.Elements[lamp].Name, [(lamp, Turned(network, lamp))]);

    /// <summary>A pair of which all lamps behind it are known is joined the wrong way round.</summary>
    /// <param name="network">The circuit.</param>
    /// <param name="pair">Name of the pair.</param>
    /// <param name="lamps">Every lamp behind it; no supply may be behind it.</param>
    /// <returns>The fault.</returns>
    public static CircuitFault Reversed(Network network, string pair, IEnumerable<int> lamps) => new(CircuitFaultKind.PairSwapped, pair, [.. lamps.Select(l => (l, (Element)Turned(network, l)))]);

    /// <summary>The two wires of a pair touch at its far end.</summary>
    /// <param name="pair">Name of the pair.</param>
    /// <param name="farPlus">The node where its plus ends.</param>
    /// <param name="farMinus">The node where its minus ends.</param>
    /// <returns>The fault.</returns>
    public static CircuitFault Bridged(string pair, int farPlus, int farMinus) => new(CircuitFaultKind.PairShorted, pair, [], new ResistorElement($"short of {pair}", farPlus, farMinus, TouchOhms));

    /// <summary>One cell of a pack is flat.</summary>
    /// <param name="network">The circuit.</param>
    /// <param name="source">The source that stands for the pack.</param>
    /// <param name="pack">The pack.</param>
    /// <param name="state">The wells of each of its good cells.</param>
    /// <returns>The fault.</returns>
    public static CircuitFault CellFlat(Network network, int source, PackLaw pack, CellState state)
    {
        var sound = (SourceElement)network.Elements[source];
        var (volts, ohms) = pack.WithFlatCell(state);
        return new(CircuitFaultKind.CellFlat, sound.Name, [(source, sound with { OpenVolts = volts, Ohms = ohms })]);
    }

    private static LampElement Turned(Network network, int lamp)
    {
        var sound = (LampElement)network.Elements[lamp];
        return new LampElement(sound.Name, sound.Cathode, sound.Anode, sound.Law, sound.ResistorOhms);
    }
}
