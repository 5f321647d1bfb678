using Duskwright.Circuits.Supplies;
using Duskwright.Faults.Signatures;
using Duskwright.Faults.Tagging;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Mending;

/// <summary>What every single fault of one circuit would show, all its switches on.</summary>
internal sealed record FaultTableQuery(CircuitInput Input)
{
    /// <summary>Begins the place of a fault in a shared pair; the tap it leads to or the building it goes on from follows.</summary>
    internal const string SharedPlace = "shared ";

    internal FaultTable Answer()
    {
        var circuit = CircuitNetwork.Of(Input);
        return new FaultTable(circuit, SignatureTable.Of(Tagged(circuit)));
    }

    /// <summary>A circuit with the names by which faults are told.</summary>
    internal static TaggedNetwork Tagged(CircuitNetwork circuit)
    {
        var pairs = circuit.Lamps.Select(l => l.Building).Distinct(StringComparer.Ordinal).SelectMany(building => Pairs(circuit, building)).Concat(Shared(circuit));
        var packs = circuit.Packs.Select(p => new PackTag(p.Input.Supply, p.Source, p.Law, p.Law is { } law ? CellState.At(law.Cell, p.Input.ChargeLeft) : default!));
        return new TaggedNetwork(
            circuit.Network,
            [.. circuit.Lamps.Select(l => new LampTag($"{l.Input.Name} of {l.Building}", l.Element))],
            [.. pairs],
            [.. packs]);
    }

    // A shared pair stands for all lamps beyond it.
    private static IEnumerable<PairTag> Shared(CircuitNetwork circuit)
    {
        var elements = circuit.Network.Elements;
        foreach (var pair in circuit.Shared)
        {
            var beyond = new HashSet<int> { elements[pair.Plus].B };
            foreach (var next in circuit.Shared.Select(s => s.Plus).Concat(circuit.Pairs.Select(p => p.Plus)).Where(plus => plus > pair.Plus && beyond.Contains(elements[plus].A)))
            {
                beyond.Add(elements[next].B);
            }

            var lamps = Enumerable.Range(0, circuit.Lamps.Count).Where(l => beyond.Contains(elements[circuit.Lamps[l].Element].A)).ToList();
            if (lamps.Count > 0)
            {
                yield return new PairTag(SharedPlace + pair.Run, [pair.Plus, pair.Minus], elements[pair.Plus].B, elements[pair.Minus].A, [.. lamps]);
            }
        }
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
