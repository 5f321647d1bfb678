using Duskwright.Circuits.Supplies;
using Duskwright.Faults.Signatures;
using Duskwright.Faults.Tagging;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Mending;

/// <summary>What every single fault of one circuit would show, all its switches on.</summary>
internal sealed record FaultTableQuery(CircuitInput Input)
{
    internal FaultTable Answer()
    {
        var circuit = CircuitNetwork.Of(Input);
        return new FaultTable(circuit, SignatureTable.Of(Tagged(circuit)));
    }

    /// <summary>A circuit with the names by which faults are told.</summary>
    internal static TaggedNetwork Tagged(CircuitNetwork circuit)
    {
        var pairs = circuit.Lamps.Select(l => l.Building).Distinct(StringComparer.Ordinal).SelectMany(building => Pairs(circuit, building));
        var packs = circuit.Packs.Select(p => new PackTag(p.Input.Supply, p.Source, p.Law, p.Law is { } law ? CellState.At(law.Cell, p.Input.ChargeLeft) : default!));
        return new TaggedNetwork(
            circuit.Network,
            [.. circuit.Lamps.Select(l => new LampTag($"{l.Input.Name} of {l.Building}", l.Element))],
            [.. pairs],
            [.. packs]);
    }

    // A building whose lamps hang on two switches has a pair for each.
    private static IEnumerable<PairTag> Pairs(CircuitNetwork circuit, string building)
    {
        var elements = circuit.Network.Elements;
        IEnumerable<int> Named(string name) => Enumerable.Range(0, elements.Length).Where(i => elements[i].Name == name);
        foreach (var (plus, minus) in Named($"plus wire of {building}").Zip(Named($"minus wire of {building}")))
        {
            var lamps = Enumerable.Range(0, circuit.Lamps.Count).Where(l => elements[circuit.Lamps[l].Element].A == elements[plus].B);
            yield return new PairTag(building, [plus, minus], elements[plus].B, elements[minus].A, [.. lamps]);
        }
    }
}

/// <summary>The circuit and its table.</summary>
internal sealed record FaultTable(CircuitNetwork Circuit, SignatureTable Table);
