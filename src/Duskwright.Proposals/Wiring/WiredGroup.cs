using System.Collections.Immutable;
using Duskwright.Harness.Feeds;
using Duskwright.Harness.Routes;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Proposals.Wiring;

/// <summary>The houses of one switch, those whose pair can still be laid another way and those whose pair is a given.</summary>
internal sealed class WiredGroup
{
    private readonly Dictionary<string, BuildingResult> _houses;
    private readonly ImmutableArray<RouteDemand> _free;
    private readonly List<BuildingResult> _given;
    private readonly TownStudy _study;

    internal WiredGroup(TownStudy study, string id, IEnumerable<BuildingResult> houses, Func<BuildingResult, RouteDemand?> demand)
    {
        (Id, _study) = (id, study);
        _houses = houses.ToDictionary(h => h.Building.Key, StringComparer.Ordinal);
        _given = [.. _houses.Values.Where(h => demand(h) is null)];
        _free = [.. _houses.Values.Select(demand).OfType<RouteDemand>()];
    }

    internal string Id { get; }

    internal int Free => _free.Length;

    internal IEnumerable<BuildingResult> Houses => _houses.Values;

    /// <summary>The pairs of the switch, the given ones last, each house at a junction of its own.</summary>
    internal LaidFeed Lay(Feeder feeder, FeedWay way, CancellationToken cancel)
    {
        var tree = _free.IsEmpty ? new FeedTree(way, [], [], 0) : feeder.Lay(way, _free, cancel);
        return StandingFeed.Added(tree, _study, Id, _given);
    }

    /// <summary>The pairs of the switch as the town has them.</summary>
    internal LaidFeed Standing() => StandingFeed.Added(new FeedTree(StandingFeed.Way(_study.Town, Id, _houses.Keys), [], [], 0), _study, Id, _houses.Values);

    /// <summary>The wire of each pair: a house's own, for one that feeds several the shared one, and for one that is given its own.</summary>
    internal ItemList<WirePart> Wires(LaidFeed laid, WirePart shared) =>
        Enumerable.Range(0, laid.Free).Select(i => laid.Tree.Beyond(i) is [var only] ? Own(only) : shared).Concat(laid.GivenWires).ToItemList();

    internal SwitchFeed Feed(FeedTree tree, ItemList<WirePart> wires) => new(
        Id,
        tree.Pieces.Zip(wires, (p, w) => new FeedPair(p.From, p.To, p.Metres, w.Id)).ToItemList(),
        tree.Ends.Select(e => new FeedHouse(e.Building, e.Junction)).ToItemList());

    internal GroupWiring Computed(FeedTree tree, ItemList<WirePart> wires, IReadOnlyList<FedBuilding> fed)
    {
        var worst = fed.MaxBy(f => f.DropVolts)!;
        var lamps = fed.ToDictionary(f => f.Building, f => f.Lamps, StringComparer.Ordinal);
        var houses = tree.Ends.ToDictionary(e => e.Junction, e => _houses[e.Building]);

        // On both conductors: one where a pair leaves the bank, one at every junction, where a house's lamps or further pairs are joined on.
        var joints = 2 * (tree.Pieces.Count(p => p.From == 0) + tree.Pieces.Length);

        // Nobody reaches a tap under the board, nor a joint in a house whose roof does not lift off.
        var outOfReach = 2 * tree.Pieces.Count(p => !houses.TryGetValue(p.To, out var house) || house.Building.Roof?.LiftsOff != true);
        return new GroupWiring(
            Id, tree, wires, joints, outOfReach, worst.DropVolts, _houses[worst.Building].Building.Name, fed.Min(f => f.Evenness),
            tree.Pieces.Select((_, i) => tree.Beyond(i).Sum(b => lamps[b])).Max(), fed.Sum(f => f.Lamps));
    }

    /// <summary>The pairs that go through the hole of each house: the one that feeds it and those that go on from it.</summary>
    internal IEnumerable<(string Hole, WirePart Wire)> ThroughHoles(FeedTree tree, ItemList<WirePart> wires)
    {
        var holes = tree.Ends.Where(e => _houses[e.Building].Building.FeedHole is not null).ToDictionary(e => e.Junction, e => _houses[e.Building].Building.FeedHole!);
        foreach (var (piece, wire) in tree.Pieces.Zip(wires))
        {
            foreach (var end in new[] { piece.From, piece.To })
            {
                if (holes.TryGetValue(end, out var hole))
                {
                    yield return (hole, wire);
                }
            }
        }
    }

    // What another way made of a pair that can still be laid anew is not the house's own wish.
    private WirePart Own(string house) => _houses[house].Building.Wire is { } said && said != PartId.Unknown ? Catalogue.FindWire(_study.Town, said)! : _study.UsualWire;
}
