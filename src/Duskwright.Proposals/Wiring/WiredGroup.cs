using System.Collections.Immutable;
using Duskwright.Harness.Feeds;
using Duskwright.Harness.Routes;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Results;

namespace Duskwright.Proposals.Wiring;

/// <summary>The houses of one switch, those whose pair can still be laid another way and those whose pair is a given.</summary>
internal sealed class WiredGroup
{
    private readonly Dictionary<string, BuildingResult> _houses;
    private readonly ImmutableArray<RouteDemand> _free;
    private readonly List<BuildingResult> _given;
    private readonly Dictionary<string, Route> _routes;

    internal WiredGroup(Town town, string id, IEnumerable<BuildingResult> houses, Func<BuildingResult, RouteDemand?> demand)
    {
        Id = id;
        _houses = houses.ToDictionary(h => h.Building.Key, StringComparer.Ordinal);
        _routes = town.Routes.ToDictionary(r => r.Building, StringComparer.Ordinal);
        _given = [.. _houses.Values.Where(h => demand(h) is null)];
        _free = [.. _houses.Values.Select(demand).OfType<RouteDemand>()];
    }

    internal string Id { get; }

    internal int Free => _free.Length;

    internal IEnumerable<BuildingResult> Houses => _houses.Values;

    /// <summary>The pairs of the switch, the given ones last, each house at a junction of its own.</summary>
    internal FeedTree Lay(Feeder feeder, FeedWay way, CancellationToken cancel)
    {
        var tree = _free.IsEmpty ? new FeedTree(way, [], [], 0) : feeder.Lay(way, _free, cancel);
        var next = tree.Pieces.Select(p => p.To).DefaultIfEmpty(0).Max() + 1;
        var given = _given.Select((h, i) => new FeedPiece(0, next + i, h.PairLength.Value, Line(h), [])).ToList();
        return tree with
        {
            Pieces = [.. tree.Pieces, .. given],
            Ends = [.. tree.Ends, .. _given.Select((h, i) => new FeedEnd(h.Building.Key, next + i))],
            AtLeastMetres = tree.AtLeastMetres + given.Sum(p => p.Metres),
        };
    }

    /// <summary>The wire of each pair: a house's own, or for one that feeds several the shared one.</summary>
    internal ItemList<WirePart> Wires(FeedTree tree, WirePart shared) =>
        tree.Pieces.Select((_, i) => tree.Beyond(i) is [var only] ? _houses[only].Wire : shared).ToItemList();

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

    private ImmutableArray<PlanePoint> Line(BuildingResult house) =>
        _routes.TryGetValue(house.Building.Key, out var route) ? [.. route.Points.Select(BoardGround.InMetres)] : [];
}
