using System.Numerics;
using Duskwright.Harness.Trunks;

namespace Duskwright.Harness.Tests.Trunks;

public class TrunkRouterTests
{
    private static CancellationToken Token => TestContext.Current.CancellationToken;

    // By hand: three houses round one junction, each 1 m from it and 1.9 m from its neighbours: 3 m by the junction, 3.8 m without.
    [Fact]
    public void A_trunk_takes_in_a_junction_where_that_saves_wire()
    {
        var net = new WireNet(4, [new(0, 3, 1), new(1, 3, 1), new(2, 3, 1), new(0, 1, 1.9), new(1, 2, 1.9)]);
        var answer = TrunkRouter.Shortest(net, [0, 1, 2], new TrunkSettings(), Token);
        Assert.Equal(3, answer.Metres, 1e-12);
        Assert.Equal([0, 1, 2], answer.Pieces);
        Assert.True(answer.Proven);
    }

    // Exact by trying every set of junctions with its shortest spanning tree.
    [Fact]
    public void Small_nets_are_solved_to_what_trying_everything_gives()
    {
        var random = new Random(4);
        for (var turn = 0; turn < 200; turn++)
        {
            var net = Random(random, junctions: 9, extra: 8);
            int[] terminals = [.. Enumerable.Range(0, random.Next(2, 6))];
            var answer = TrunkRouter.Shortest(net, [.. terminals], new TrunkSettings(), Token);
            Assert.Equal(TryEverything(net, terminals), answer.Metres, 1e-9);
            Assert.True(answer.Proven, $"net {turn}");
        }
    }

    [Fact]
    public void A_trunk_is_a_tree_that_joins_all_taps_and_is_no_shorter_than_its_bound()
    {
        var random = new Random(5);
        for (var turn = 0; turn < 20; turn++)
        {
            var net = Random(random, junctions: 80, extra: 60);
            int[] terminals = [.. Enumerable.Range(0, 15)];
            var answer = TrunkRouter.Shortest(net, [.. terminals], new TrunkSettings(), Token);
            Assert.True(answer.AtLeastMetres <= answer.Metres);
            Assert.True(answer.AtLeastMetres > 0.9 * answer.Metres);
            var joined = terminals.Take(1).ToHashSet();
            var left = answer.Pieces.ToList();
            while (left.FirstOrDefault(p => joined.Contains(net.Pieces[p].From) || joined.Contains(net.Pieces[p].To), -1) is >= 0 and var piece)
            {
                // A piece with both ends joined already would close a loop.
                Assert.True(joined.Add(net.Pieces[piece].From) | joined.Add(net.Pieces[piece].To));
                left.Remove(piece);
            }

            Assert.Empty(left);
            Assert.Superset(terminals.ToHashSet(), joined);
        }
    }

    [Fact]
    public void A_house_that_no_wireway_joins_is_named()
    {
        var answer = TrunkRouter.Shortest(new WireNet(3, [new(0, 1, 1)]), [0, 1, 2], new TrunkSettings(), Token);
        Assert.Equal([2], answer.Unreached);
        Assert.Empty(answer.Pieces);
    }

    [Fact]
    public void Without_rounds_the_dual_bound_is_still_valid()
    {
        var random = new Random(6);
        for (var turn = 0; turn < 50; turn++)
        {
            var net = Random(random, junctions: 9, extra: 10);
            var answer = TrunkRouter.Shortest(net, [0, 1, 2, 3], new TrunkSettings(Rounds: 0), Token);
            Assert.InRange(TryEverything(net, [0, 1, 2, 3]), answer.AtLeastMetres - 1e-9, answer.Metres + 1e-9);
        }
    }

    private static WireNet Random(Random random, int junctions, int extra) => new(
        junctions,
        [
            .. Enumerable.Range(1, junctions - 1).Select(j => new NetPiece(random.Next(j), j, random.Next(1, 100) / 100.0)),
            .. Enumerable.Range(0, extra).Select(_ => new NetPiece(random.Next(junctions - 1), junctions - 1 - random.Next(2), random.Next(1, 100) / 100.0)).Where(p => p.From != p.To),
        ]);

    private static double TryEverything(WireNet net, int[] terminals)
    {
        var must = terminals.Aggregate(0u, (mask, t) => mask | (1u << t));
        return Enumerable.Range(0, 1 << net.Junctions).Select(m => (uint)m).Where(m => (m & must) == must).Min(m => Spanning(net, m));
    }

    private static double Spanning(WireNet net, uint junctions)
    {
        var root = Enumerable.Range(0, net.Junctions).ToArray();
        int Root(int j) => root[j] == j ? j : root[j] = Root(root[j]);
        var (metres, joins) = (0.0, 0);
        foreach (var piece in net.Pieces.Where(p => (junctions & (1u << p.From)) != 0 && (junctions & (1u << p.To)) != 0).OrderBy(p => p.Metres))
        {
            if (Root(piece.From) != Root(piece.To))
            {
                root[Root(piece.From)] = Root(piece.To);
                (metres, joins) = (metres + piece.Metres, joins + 1);
            }
        }

        return joins == BitOperations.PopCount(junctions) - 1 ? metres : double.PositiveInfinity;
    }
}
