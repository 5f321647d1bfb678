using System.Globalization;
using Duskwright.Harness.Feeds;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Proposals.Wiring;

/// <summary>One switch whose houses each have a plus wire of their own and share one minus wire, computed beside its three ways.</summary>
/// <remarks>Plus wires run as the pairs of the first way do, the return as the trunk of the second. It carries the current of all its houses.</remarks>
/// <param name="SwitchGroup">The switch group's id.</param>
/// <param name="WireMetres">Wire to cut, plus wires and return, m.</param>
/// <param name="OwnPairsMetres">What a pair to each house takes, both conductors, m.</param>
/// <param name="ReturnWire">The wire of the return: the usual one, or the thinnest that leaves no lamp visibly fainter.</param>
/// <param name="Joints">Joints to be made.</param>
/// <param name="OutOfReach">How many of them nobody can reach once the town stands.</param>
/// <param name="WorstDropVolts">The most that is lost from the switch to a house and back, V.</param>
/// <param name="WorstDropAt">The name of that house.</param>
/// <param name="Evenness">The faintest lamp on the switch against the brightest of its kind on the pack, as lightness L*.</param>
/// <param name="Darkened">How many lamps one broken joint of the return darkens at worst.</param>
/// <param name="Lamps">How many lamps the switch lights.</param>
public sealed record CommonReturn(
    string SwitchGroup, double WireMetres, double OwnPairsMetres, WirePart ReturnWire, int Joints, int OutOfReach, double WorstDropVolts, string WorstDropAt, double Evenness, int Darkened, int Lamps)
{
    /// <summary>The comparison in words.</summary>
    /// <param name="visibleStep">From which difference in lightness on the eye sees it.</param>
    /// <returns>A sentence or two.</returns>
    public string Words(double visibleStep) => string.Create(CultureInfo.InvariantCulture, $"{WireMetres:0.0} m of wire instead of {OwnPairsMetres:0.0} m by a pair to each house, the return of {ReturnWire.Name}; {1000 * WorstDropVolts:0} mV are lost at most, at {WorstDropAt}; {Joints} joints, {OutOfReach} of them out of reach; one broken joint of the return darkens up to {Darkened} of {Lamps} lamps.")
        + (Evenness < 100 - visibleStep ? string.Create(CultureInfo.InvariantCulture, $" A lamp would look fainter than its like, by {100 - Evenness:0} of lightness.") : "");

    /// <summary>Computes it for every switch with two houses or more of which no pair is given yet.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="ways">The three ways computed from them.</param>
    /// <returns>One for each such switch, in their order.</returns>
    public static ItemList<CommonReturn> Of(TownStudy study, WiringWays ways)
    {
        var town = study.Town;
        var held = SharedRuns.Held(town);
        var open = ways.OwnPairs.Groups.Zip(ways.Trunks.Groups)
            .Where(g => g.First.Tree.Ends.Length > 1 && g.First.Tree.Ends.All(e => !held.Contains(e.Building)) && g.First.Tree.Pieces.All(p => p.From == 0 && p.Points.Length > 1))
            .ToList();
        if (open.Count == 0)
        {
            return [];
        }

        var sizes = TrunkWires.From(study.UsualWire, Catalogue.Parts.Wires.Concat(town.OwnParts.Wires));
        var best = new Dictionary<string, (WirePart Wire, ItemList<FedBuilding> Fed)>(StringComparer.Ordinal);
        foreach (var wire in sizes)
        {
            // A thicker return is tried only where a lamp is still seen to be fainter.
            var trying = open.Where(g => !best.TryGetValue(g.First.SwitchGroup, out var b) || b.Fed.Min(f => f.Evenness) < 100 - town.Show.VisibleStep).ToList();
            var fed = trying.Count == 0 ? [] : study.FedBy(trying.Select(g => Feed(g.First, g.Second.Tree, wire)).ToItemList());
            foreach (var group in trying.Select(g => g.First.SwitchGroup))
            {
                var here = fed.Where(f => f.SwitchGroup == group).ToItemList();
                if (!best.TryGetValue(group, out var before) || here.Min(f => f.Evenness) > before.Fed.Min(f => f.Evenness))
                {
                    best[group] = (wire, here);
                }
            }
        }

        return open.Select(g => Computed(study, g.First, g.Second.Tree, best[g.First.SwitchGroup].Wire, best[g.First.SwitchGroup].Fed)).ToItemList();
    }

    private static SwitchFeed Feed(GroupWiring own, FeedTree back, WirePart wire) => new(
        own.SwitchGroup,
        own.Tree.Pieces.Zip(own.WireOf, (p, w) => new FeedPair(p.From, p.To, p.Metres, w.Id)).ToItemList(),
        own.Tree.Ends.Select(e => new FeedHouse(e.Building, e.Junction)).ToItemList())
    {
        Return = new SharedReturn(
            back.Pieces.Select(p => new FeedPair(p.From, p.To, p.Metres, wire.Id)).ToItemList(),
            back.Ends.Select(e => new FeedHouse(e.Building, e.Junction)).ToItemList()),
    };

    private static CommonReturn Computed(TownStudy study, GroupWiring own, FeedTree back, WirePart wire, ItemList<FedBuilding> fed)
    {
        var houses = study.Buildings.ToDictionary(b => b.Building.Key, StringComparer.Ordinal);
        var lamps = fed.ToDictionary(f => f.Building, f => f.Lamps, StringComparer.Ordinal);
        var worst = fed.MaxBy(f => f.DropVolts)!;
        return new CommonReturn(
            own.SwitchGroup,
            own.Tree.Metres + back.Metres,
            own.WireMetres,
            wire,
            Joints(own.Tree) + Joints(back),
            OutOfReach(own.Tree) + OutOfReach(back),
            worst.DropVolts,
            houses[worst.Building].Building.Name,
            fed.Min(f => f.Evenness),
            back.Pieces.Select((_, i) => back.Beyond(i).Sum(b => lamps[b])).Max(),
            own.Lamps);

        // One where a wire leaves the bank, one at every junction, as for a conductor of a pair.
        static int Joints(FeedTree tree) => tree.Pieces.Count(p => p.From == 0) + tree.Pieces.Length;

        int OutOfReach(FeedTree tree)
        {
            var at = tree.Ends.ToDictionary(e => e.Junction, e => houses[e.Building].Building);
            return tree.Pieces.Count(p => !at.TryGetValue(p.To, out var house) || house.Roof?.LiftsOff != true);
        }
    }
}
