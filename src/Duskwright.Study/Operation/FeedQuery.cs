using Duskwright.Circuits.Solving;
using Duskwright.Light.Perception;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Results;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Operation;

/// <summary>A circuit solved as it stands, for pairs that are only thought of.</summary>
/// <remarks>A pair has a joint at its beginning and a house one at its end, so that a pair of its own has the two it has in the town.</remarks>
internal sealed record FeedQuery(CircuitInput Input)
{
    internal static ItemList<FedBuilding> Of(ResolvedTown resolved, ItemList<SwitchFeed> feeds, Memo memo)
    {
        var feedOf = feeds.ToDictionary(f => f.SwitchGroup, StringComparer.Ordinal);
        var place = resolved.Buildings.Select((b, i) => (b.Building.Key, i)).ToDictionary(x => x.Key, x => x.i, StringComparer.Ordinal);
        return CircuitInputs.Of(resolved, Corner.Typical)
            .Select(c => c with
            {
                Packs = c.Packs.Select(p => p with
                {
                    Groups = p.Groups.Select(g => feedOf.TryGetValue(g.Id, out var feed) ? Fed(resolved, g, feed) : g).ToItemList(),
                }).ToItemList(),
            })
            .SelectMany(c => memo.Get(new FeedQuery(c), q => q.Answer()))
            .OrderBy(b => place[b.Building])
            .ToItemList();
    }

    private ItemList<FedBuilding> Answer()
    {
        var circuit = CircuitNetwork.Of(Input);
        var solution = OperatingPoint.Solve(circuit.Network);
        if (solution.Status != SolveStatus.Solved)
        {
            throw new InvalidOperationException($"The circuit has no solution at {solution.FailedAt} ({solution.Status}).");
        }

        double Across(int element) => solution.NodeVolts[circuit.Network.Elements[element].A] - solution.NodeVolts[circuit.Network.Elements[element].B];
        double Light(CircuitLamp lamp) => lamp.Law.At(Across(lamp.Element), lamp.Input.BranchOhms).Light;
        var brightest = circuit.Lamps.GroupBy(l => (l.Pack, l.Input.Part.Id)).ToDictionary(g => g.Key, g => g.Max(Light));
        var switched = circuit.Packs
            .SelectMany(p => p.Input.Groups.Select(g => (g.Id, Volts: solution.NodeVolts[Switched(circuit, g.Id)])))
            .ToDictionary(x => x.Id, x => x.Volts, StringComparer.Ordinal);
        var strip = Input.ReturnOhms > 0 ? solution.NodeVolts[circuit.Network.Elements[0].A] : 0;
        return circuit.Lamps.GroupBy(l => (l.Building, l.Group)).Select(house => new FedBuilding(
            house.Key.Building,
            house.Key.Group,
            house.Count(),
            switched[house.Key.Group] - strip - Across(house.First().Element),
            house.Min(l => brightest[(l.Pack, l.Input.Part.Id)] is var most && most > 0 ? Lightness.OfShare(Light(l) / most) : 100))).ToItemList();
    }

    private static int Switched(CircuitNetwork circuit, string group) => circuit.Network.Elements.First(e => e.Name == $"switch {group}").B;

    private static GroupInput Fed(ResolvedTown resolved, GroupInput group, SwitchFeed feed)
    {
        var joint = resolved.Town.Wiring.JointResistance?.Ohms ?? Usual.JointOhms;
        var junctions = feed.Houses.ToDictionary(h => h.Building, h => h.Junction, StringComparer.Ordinal);
        double Ohms(FeedPair pair) => (pair.Metres * Catalogue.FindWire(resolved.Town, pair.Wire)!.PerMetre.Ohms) + joint;
        if (feed.Return is { } back)
        {
            // Plus wires run from the switch to their houses; the junctions are those of the return.
            var plus = feed.Pairs.ToDictionary(p => p.To, Ohms);
            var behind = back.Houses.ToDictionary(h => h.Building, h => h.Junction, StringComparer.Ordinal);
            return group with
            {
                Shared = back.Wires.Select(w => new SharedPairInput(w.From, w.To, Ohms(w)) { OnlyReturn = true }).ToItemList(),
                Pairs = group.Pairs.Select(p => p with { Junction = behind[p.Building], ConductorOhms = plus[junctions[p.Building]] + joint, ReturnOhms = joint }).ToItemList(),
            };
        }

        return group with
        {
            Shared = feed.Pairs.Select(p => new SharedPairInput(p.From, p.To, Ohms(p))).ToItemList(),
            Pairs = group.Pairs.Select(p => p with { Junction = junctions[p.Building], ConductorOhms = joint }).ToItemList(),
        };
    }
}
