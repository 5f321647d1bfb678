using Duskwright.Circuits.Metering;
using Duskwright.Circuits.Networks;
using Duskwright.Faults.Testing;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>What the readings of a house on one of its supplies are computed from: the circuit at three corners, and which parts are not known.</summary>
/// <param name="Least">What lets the least through.</param>
/// <param name="Typical">As it is likeliest.</param>
/// <param name="Most">What lets the most through.</param>
/// <param name="Building">The house's key.</param>
/// <param name="UnknownLamps">Lamps of which the kind or the resistor is not known, by building and name.</param>
/// <param name="UnknownPairs">Buildings whose wire or length is not known.</param>
internal sealed record TestPointQuery(CircuitInput Least, CircuitInput Typical, CircuitInput Most, string Building, ItemList<(string Building, string Lamp)> UnknownLamps, ItemList<string> UnknownPairs)
{
    // Touching a lamp's own leads to the pack: a pair of no length.
    private const double TouchOhms = 0.01;

    /// <summary>Other houses that light with it at the bank, by key and name.</summary>
    internal ItemList<(string Key, string Name)> Company { get; init; } = [];

    /// <summary>The id of the supply.</summary>
    internal string Supply => Typical.Packs[0].Supply;

    /// <summary>Whose lamps are on: "this house alone", "this house with Inn and Forge".</summary>
    internal string Who => Company.Count == 0 ? "this house alone" : $"this house with {Listed}";

    /// <summary>The others in words: "Inn and Forge".</summary>
    internal string Listed => Company.Count == 0 ? "" : Company.Count == 1 ? Company[0].Name : $"{string.Join(", ", Company.Take(Company.Count - 1).Select(c => c.Name))} and {Company[^1].Name}";

    /// <summary>A house at the bank, for each supply that its lamps hang on, in the order of its lamps; none where some are not fed.</summary>
    internal static ItemList<TestPointQuery> AtTheBank(ResolvedBuilding building, CircuitResults circuits, RunCompany company)
    {
        if (!building.Lamps.All(l => circuits.Lamps.ContainsKey((l.Building, l.Name))))
        {
            return [];
        }

        return building.Lamps.Select(l => circuits.Lamps[(l.Building, l.Name)])
            .DistinctBy(p => (p.Run, p.Run.Circuit.Lamps[p.Index].Pack))
            .Select(place => OnOneSupply(building, place, company))
            .ToItemList();
    }

    private static TestPointQuery OnOneSupply(ResolvedBuilding building, LampPlace place, RunCompany company)
    {
        var pack = place.Run.Circuit.Lamps[place.Index].Pack;
        var with = company.Of(building.Building.Key, place.Run.Circuit.Packs[pack].Input);
        var lit = with.Prepend(building).ToList();
        CircuitInput Lit(CircuitRun run)
        {
            var input = run.Circuit.Packs[pack].Input;
            var groups = input.Groups.Select(g => g with { Pairs = g.Pairs.Where(p => lit.Exists(b => b.Building.Key == p.Building)).ToItemList() }).Where(g => g.Pairs.Any(p => p.Building == building.Building.Key));
            return new CircuitInput([input with { Groups = groups.ToItemList() }], 0, 0, Coarse: true);
        }

        return new TestPointQuery(
            Lit(place.Low),
            Lit(place.Run),
            Lit(place.High),
            building.Building.Key,
            lit.SelectMany(b => b.Lamps).Where(l => l.PartUnknown || l.ResistorOrigin == ResistorOrigin.Unknown).Select(l => (l.Building, l.Name)).ToItemList(),
            lit.Where(b => b.Pair.WireUnknown || b.Pair.Origin == LengthOrigin.Unknown).Select(b => b.Building.Key).ToItemList())
        {
            Company = with.Select(b => (b.Building.Key, b.Building.Name)).ToItemList(),
        };
    }

    /// <summary>The house alone on a test pack, by the ends of its own pair: fresh cells of the kind that will feed it, without its fuse.</summary>
    internal TestPointQuery OnTestPack() => Alone(p => p with { ChargeLeft = 1, FuseOhms = 0 });

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

    /// <summary>What the others on its run take before it is joined; none where nothing else is on it, or where its own pair goes on to others.</summary>
    internal TestPointQuery? BeforeIt() => Company.Count == 0 || Typical.Packs[0].Groups.SelectMany(g => g.Shared).Any(s => s.Run == Building)
        ? null
        : Changed(p => p with
        {
            Groups = p.Groups.Select(g => g with { Pairs = g.Pairs.Where(x => x.Building != Building).ToItemList() }).Where(g => g.Pairs.Count > 0).ToItemList(),
        });

    /// <summary>Its pair taken off the bank, so that a meter can take the supply's place; none where it hangs on several pairs of one supply, which cannot be taken off as one.</summary>
    internal CircuitInput? OffTheBank()
    {
        var alone = Alone(p => p with { FuseOhms = 0 });
        return alone.Typical.Packs[0].Groups.Sum(g => g.Pairs.Count) != 1
            ? null
            : alone.Changed(p => p with { Groups = p.Groups.Select(g => g with { SwitchOhms = TouchOhms }).ToItemList() }).Typical;
    }

    internal TestPointBands Answer() => TestPointBands.Of(this, CircuitNetwork.Of(Typical));

    /// <summary>The circuit with the parts that may differ; its meter stands in line with the supply.</summary>
    internal TestCircuit Circuit(CircuitNetwork circuit) => new(circuit.Network, circuit.Packs[0].Source, TestPointParts.Of(this, circuit));

    /// <summary>The circuit with every flickering lamp held in one state.</summary>
    internal static Network Held(CircuitNetwork circuit, bool lit) => new(
        circuit.Network.NodeCount,
        [.. circuit.Network.Elements.Select(e => e is LampElement { Law: Circuits.Lamps.FlickerLaw law } lamp ? lamp with { Law = law.InState(lit) } : e)]);

    internal bool Flickers => Typical.Packs.SelectMany(p => p.Groups).SelectMany(g => g.Pairs).SelectMany(p => p.Lamps).Any(l => l.Part.Kind == LampKind.Flickering);

    internal static Meter Meter => Meter.Usual;

    // By the ends of its own pair, which is wholly its own then, even where it goes on to others.
    private TestPointQuery Alone(Func<PackInput, PackInput> change) => Changed(p => change(p) with
    {
        Groups = p.Groups.Select(g => g with
        {
            Shared = [],
            Pairs = g.Pairs.Where(x => x.Building == Building)
                .Select(x => x with { Junction = 0, ConductorOhms = x.ConductorOhms + (g.Shared.FirstOrDefault(s => s.Run == Building)?.ConductorOhms ?? 0) })
                .ToItemList(),
        }).Where(g => g.Pairs.Count > 0).ToItemList(),
    }) with
    {
        Company = [],
    };

    private TestPointQuery Changed(Func<PackInput, PackInput> change)
    {
        CircuitInput On(CircuitInput input) => input with { Packs = input.Packs.Select(change).ToItemList() };
        return this with { Least = On(Least), Typical = On(Typical), Most = On(Most) };
    }
}
