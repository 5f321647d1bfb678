using System.Collections.Immutable;
using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Supplies;

namespace Duskwright.Study.Wiring;

/// <summary>A circuit as a network, with the way back from its elements to lamps and packs.</summary>
/// <remarks>Node 0 is where the packs' minus poles meet.</remarks>
internal sealed class CircuitNetwork
{
    internal const string CommonReturn = "common return";

    private readonly List<Element> _elements = [];
    private readonly List<CircuitLamp> _lamps = [];
    private readonly List<CircuitPack> _packs = [];
    private readonly List<CircuitPair> _pairs = [];
    private readonly List<CircuitSharedPair> _shared = [];
    private int _nodes = 1;

    private CircuitNetwork(CircuitInput input)
    {
        var strip = 0;
        if (input.ReturnOhms > 0)
        {
            strip = Wire(CommonReturn, _nodes++, 0, input.ReturnOhms).A;
        }

        foreach (var pack in input.Packs)
        {
            AddPack(pack, strip);
        }

        Network = new Network(_nodes, [.. _elements]);
    }

    internal Network Network { get; }

    internal IReadOnlyList<CircuitLamp> Lamps => _lamps;

    internal IReadOnlyList<CircuitPack> Packs => _packs;

    internal IReadOnlyList<CircuitPair> Pairs => _pairs;

    internal IReadOnlyList<CircuitSharedPair> Shared => _shared;

    internal static CircuitNetwork Of(CircuitInput input) => new(input);

    /// <summary>The stores that run down, for the discharge.</summary>
    internal ImmutableArray<PackOnNetwork> Stores =>
        [.. _packs.Where(p => p.Law is not null).Select(p => new PackOnNetwork(_elements[p.Source].Name, p.Law!, CellState.At(p.Law!.Cell, p.Input.ChargeLeft)))];

    private void AddPack(PackInput pack, int strip)
    {
        var plus = _nodes++;
        var law = PackLaws.Of(pack);
        var source = _elements.Count;
        _elements.Add(law is not null
            ? new SourceElement($"pack {pack.Supply}", plus, 0, law.OpenVolts(CellState.At(law.Cell, pack.ChargeLeft)), law.Ohms(CellState.At(law.Cell, pack.ChargeLeft)))
            : new SourceElement(
                $"supply {pack.Supply}",
                plus,
                0,
                pack.Part.NominalVoltage.Volts * pack.Series,
                pack.Part.SourceResistance!.Value.Ohms * pack.Series / pack.Parallel,
                pack.Part.CurrentLimit is { } limit ? limit.Amperes * pack.Parallel : double.PositiveInfinity));
        _packs.Add(new CircuitPack(pack, source, plus, law));
        var fused = pack.FuseOhms > 0 ? Wire($"fuse of {pack.Supply}", plus, _nodes++, pack.FuseOhms).B : plus;
        foreach (var group in pack.Groups)
        {
            var switched = Wire($"switch {group.Id}", fused, _nodes++, group.SwitchOhms).B;
            var junctions = new Dictionary<int, (int Plus, int Minus)> { [0] = (switched, strip) };
            foreach (var piece in group.Shared)
            {
                var (plusBefore, minusBefore) = junctions[piece.From];
                if (piece.OnlyReturn)
                {
                    junctions[piece.To] = (plusBefore, Wire($"minus wire to junction {piece.To} of switch {group.Id}", _nodes++, minusBefore, piece.ConductorOhms).A);
                    continue;
                }

                _shared.Add(new CircuitSharedPair(piece.Run, _elements.Count, _elements.Count + 1));
                junctions[piece.To] = (
                    Wire($"plus wire to junction {piece.To} of switch {group.Id}", plusBefore, _nodes++, piece.ConductorOhms).B,
                    Wire($"minus wire to junction {piece.To} of switch {group.Id}", _nodes++, minusBefore, piece.ConductorOhms).A);
            }

            foreach (var pair in group.Pairs)
            {
                var (from, to) = junctions[pair.Junction];
                _pairs.Add(new CircuitPair(pair.Building, group.Id, _elements.Count, _elements.Count + 1));
                var house = Wire($"plus wire of {pair.Building}", from, _nodes++, pair.ConductorOhms).B;
                var back = Wire($"minus wire of {pair.Building}", _nodes++, to, pair.ReturnOhms ?? pair.ConductorOhms).A;
                foreach (var lamp in pair.Lamps)
                {
                    _lamps.Add(new CircuitLamp(pair.Building, lamp, group.Id, _packs.Count - 1, _elements.Count, LampLaws.Of(lamp.Part)));
                    _elements.Add(new LampElement($"{lamp.Name} of {pair.Building}", house, back, _lamps[^1].Law, lamp.BranchOhms));
                }
            }
        }
    }

    // A house at the bank, without slack and with joints said to have nothing, hangs on the least that can be solved.
    private ResistorElement Wire(string name, int from, int to, double ohms)
    {
        var wire = new ResistorElement(name, from, to, Math.Max(ohms, Network.LeastOhms));
        _elements.Add(wire);
        return wire;
    }
}

/// <summary>A lamp in a network. <see cref="Pack"/> and <see cref="Element"/> are indices.</summary>
internal sealed record CircuitLamp(string Building, LampInput Input, string Group, int Pack, int Element, LampLaw Law);

/// <summary>A supply in a network. <see cref="Source"/> is the index of its element, <see cref="Plus"/> its node; no law means regulated.</summary>
internal sealed record CircuitPack(PackInput Input, int Source, int Plus, PackLaw? Law);

/// <summary>A pair in a network: a building has one for each switch it hangs on. <see cref="Plus"/> and <see cref="Minus"/> are the indices of its wires.</summary>
internal sealed record CircuitPair(string Building, string Group, int Plus, int Minus);

/// <summary>A pair that several houses share. <see cref="Run"/> is the tap it leads to or the building it goes on from.</summary>
internal sealed record CircuitSharedPair(string Run, int Plus, int Minus);
