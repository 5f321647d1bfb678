using System.Collections.Immutable;
using Duskwright.Harness.Routes;
using Duskwright.Harness.Trunks;

namespace Duskwright.Harness.Feeds;

/// <summary>Lays out the pairs of one switch in each of the three ways to feed its buildings.</summary>
/// <param name="ways">The wireways; none for open ground, where lengths are straight ones with the detour of the rules.</param>
/// <param name="bank">Where the pairs start.</param>
/// <param name="rules">Slack of each pair and detour on open ground.</param>
public sealed class Feeder(ImmutableArray<WirewayLine> ways, PlanePoint bank, RouteRules rules)
{
    // Buildings of one switch are few; the proof is left where it takes long.
    private static readonly TrunkSettings Quick = new(Starts: 8, Rounds: 60, DeterministicSeconds: 0.5);

    /// <summary>Lays out one way.</summary>
    /// <param name="way">The way.</param>
    /// <param name="demands">The buildings; each must reach the bank (<see cref="Router"/> says which do not).</param>
    /// <param name="cancel">Stops the proof of the trunk; the shortest found so far is given.</param>
    /// <returns>The pairs; every building is fed once.</returns>
    public FeedTree Lay(FeedWay way, ImmutableArray<RouteDemand> demands, CancellationToken cancel = default)
    {
        var ground = new FeedGround(ways, bank, demands, rules);
        return way switch
        {
            FeedWay.Trunk => Trunk(ground, cancel),
            FeedWay.Chain => Chain(ground),
            _ => OwnPairs(ground),
        };
    }

    private static FeedTree OwnPairs(FeedGround ground)
    {
        ImmutableArray<FeedPiece> pieces = [.. Enumerable.Range(1, ground.Places - 1).Select(p => Piece(ground, 0, p))];
        return new FeedTree(FeedWay.OwnPairs, pieces, Ends(ground), pieces.Sum(p => p.Metres));
    }

    private static FeedTree Chain(FeedGround ground)
    {
        var between = Enumerable.Range(0, ground.Places).Select(a => Enumerable.Range(0, ground.Places).Select(b => a == b ? 0 : ground.Between(a, b).Metres).ToArray()).ToArray();
        var (order, _, atLeast) = ChainOrder.Shortest(between);
        var slack = ground.Rules.SlackMetres * order.Length;
        return new FeedTree(FeedWay.Chain, [.. order.Select((place, i) => Piece(ground, i == 0 ? 0 : order[i - 1], place))], Ends(ground), atLeast + slack);
    }

    private static FeedTree Trunk(FeedGround ground, CancellationToken cancel)
    {
        if (ground.Net() is not { } laid)
        {
            return Branches(ground);
        }

        var trunk = TrunkRouter.Shortest(laid.Net, laid.Terminals, Quick, cancel);
        var tree = new TrunkLayout(ground, laid.Net, laid.Points, laid.Ways, laid.Terminals, trunk.Pieces).Pieces();
        return new FeedTree(FeedWay.Trunk, tree, Ends(ground), tree.Sum(p => p.Metres) - trunk.Metres + trunk.AtLeastMetres);
    }

    // On open ground a trunk branches in the houses it calls at: the shortest spanning tree (Prim).
    private static FeedTree Branches(FeedGround ground)
    {
        var pieces = ImmutableArray.CreateBuilder<FeedPiece>();
        var (joined, left) = (new List<int> { 0 }, Enumerable.Range(1, ground.Places - 1).ToHashSet());
        while (left.Count > 0)
        {
            var (from, to) = joined.SelectMany(a => left.Select(b => (a, b))).MinBy(x => ground.Between(x.a, x.b).Metres);
            pieces.Add(Piece(ground, from, to));
            joined.Add(to);
            left.Remove(to);
        }

        return new FeedTree(FeedWay.Trunk, pieces.ToImmutable(), Ends(ground), pieces.Sum(p => p.Metres));
    }

    private static FeedPiece Piece(FeedGround ground, int from, int to)
    {
        var (metres, points, used) = ground.Between(from, to);
        return new FeedPiece(from, to, metres + ground.Rules.SlackMetres, points, used);
    }

    // The junction of a building is its place among the demands, from 1.
    private static ImmutableArray<FeedEnd> Ends(FeedGround ground) => [.. Enumerable.Range(1, ground.Places - 1).Select(p => new FeedEnd(ground.Building(p), p))];
}
