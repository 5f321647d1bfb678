using Duskwright.Circuits.Metering;
using Duskwright.Circuits.Networks;
using Duskwright.Faults.Testing;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>What the readings of a house alone on one supply are computed from: its circuit at three corners, and which parts are not known.</summary>
internal sealed record TestPointQuery(CircuitInput Least, CircuitInput Typical, CircuitInput Most, ItemList<string> UnknownLamps, bool UnknownPair)
{
    // Touching a lamp's own leads to the pack: a pair of no length.
    private const double TouchOhms = 0.01;

    /// <summary>A house alone at the bank; none where its lamps are not fed, or by several supplies.</summary>
    internal static TestPointQuery? AtTheBank(ResolvedBuilding building, CircuitResults circuits)
    {
        if (building.Lamps.Count == 0 || !building.Lamps.All(l => circuits.Lamps.ContainsKey((l.Building, l.Name))))
        {
            return null;
        }

        var places = building.Lamps.Select(l => circuits.Lamps[(l.Building, l.Name)]).ToList();
        if (places.Select(p => (p.Run, p.Run.Circuit.Lamps[p.Index].Pack)).Distinct().Count() != 1)
        {
            return null;
        }

        var (place, key) = (places[0], building.Building.Key);
        var pack = place.Run.Circuit.Lamps[place.Index].Pack;
        CircuitInput Alone(CircuitRun run)
        {
            var input = run.Circuit.Packs[pack].Input;
            var groups = input.Groups.Select(g => g with { Pairs = g.Pairs.Where(p => p.Building == key).ToItemList() }).Where(g => g.Pairs.Count > 0);
            return new CircuitInput([input with { Groups = groups.ToItemList() }], 0, 0, Coarse: true);
        }

        return new TestPointQuery(
            Alone(place.Low),
            Alone(place.Run),
            Alone(place.High),
            building.Lamps.Where(l => l.PartUnknown || l.ResistorOrigin == ResistorOrigin.Unknown).Select(l => l.Name).ToItemList(),
            building.Pair.WireUnknown || building.Pair.Origin == LengthOrigin.Unknown);
    }

    /// <summary>The same on a test pack: fresh cells of the kind that will feed it, without its fuse and without pairs it shares.</summary>
    internal TestPointQuery OnTestPack() => Changed(p => p with
    {
        ChargeLeft = 1,
        FuseOhms = 0,
        Groups = p.Groups.Select(g => g with { Shared = [], Pairs = g.Pairs.Select(x => x with { Junction = 0 }).ToItemList() }).ToItemList(),
    });

    /// <summary>One lamp by itself on a test pack, by its own leads.</summary>
    internal TestPointQuery OneLamp(string lamp) => OnTestPack().Changed(p => p with
    {
        Groups = p.Groups.Select(g => g with
        {
            Pairs = g.Pairs.Select(x => x with { ConductorOhms = TouchOhms, Lamps = x.Lamps.Where(l => l.Name == lamp).ToItemList() }).Where(x => x.Lamps.Count > 0).ToItemList(),
        }).Where(g => g.Pairs.Count > 0).ToItemList(),
    });

    /// <summary>Only one of its switches on.</summary>
    internal TestPointQuery OnSwitch(string group) => Changed(p => p with { Groups = p.Groups.Where(g => g.Id == group).ToItemList() });

    /// <summary>Its pair taken off the bank, so that a meter can take the supply's place; none where it hangs on several pairs, which cannot be taken off as one.</summary>
    internal CircuitInput? OffTheBank() => Typical.Packs[0].Groups.Sum(g => g.Pairs.Count) != 1 ? null : Changed(p => p with
    {
        FuseOhms = 0,
        Groups = p.Groups.Select(g => g with { SwitchOhms = TouchOhms, Shared = [], Pairs = g.Pairs.Select(x => x with { Junction = 0 }).ToItemList() }).ToItemList(),
    }).Typical;

    internal TestPointBands Answer() => TestPointBands.Of(this, CircuitNetwork.Of(Typical));

    /// <summary>The circuit with the parts that may differ; its meter stands in line with the supply.</summary>
    internal TestCircuit Circuit(CircuitNetwork circuit) => new(circuit.Network, circuit.Packs[0].Source, TestPointParts.Of(this, circuit));

    /// <summary>The circuit with every flickering lamp held in one state.</summary>
    internal static Network Held(CircuitNetwork circuit, bool lit) => new(
        circuit.Network.NodeCount,
        [.. circuit.Network.Elements.Select(e => e is LampElement { Law: Circuits.Lamps.FlickerLaw law } lamp ? lamp with { Law = law.InState(lit) } : e)]);

    internal bool Flickers => Typical.Packs.SelectMany(p => p.Groups).SelectMany(g => g.Pairs).SelectMany(p => p.Lamps).Any(l => l.Part.Kind == LampKind.Flickering);

    internal static Meter Meter => Meter.Usual;

    private TestPointQuery Changed(Func<PackInput, PackInput> change)
    {
        CircuitInput On(CircuitInput input) => input with { Packs = input.Packs.Select(change).ToItemList() };
        return this with { Least = On(Least), Typical = On(Typical), Most = On(Most) };
    }
}
