using System.Collections.Immutable;
using Duskwright.Harness.Feeds;
using Duskwright.Harness.Routes;

namespace Duskwright.Harness.Tests.Feeds;

public class FeederTests
{
    private const double Slack = 0.05;

    // A wireway of 1 m from the bank; houses stand 0.1 m beside it at 0.2, 0.6 and 1.0 m.
    private static readonly ImmutableArray<RouteDemand> Street =
        [new("A", new PlanePoint(0.2, 0.1)), new("B", new PlanePoint(0.6, 0.1)), new("C", new PlanePoint(1, 0.1))];

    private static readonly Feeder AlongTheStreet = new([new WirewayLine("street", [new PlanePoint(0, 0), new PlanePoint(1, 0)])], new PlanePoint(0, 0), new RouteRules(Slack, 1.4));

    // Expected lengths are sums done by hand.
    [Theory]
    [InlineData(FeedWay.OwnPairs, 0.3 + 0.7 + 1.1, 3)]
    [InlineData(FeedWay.Trunk, 1 + (3 * 0.1), 5)]
    [InlineData(FeedWay.Chain, 0.3 + (2 * (0.1 + 0.4 + 0.1)), 3)]
    public void A_straight_street_takes_the_wire_that_a_ruler_finds(FeedWay way, double metres, int pieces)
    {
        var tree = AlongTheStreet.Lay(way, Street, TestContext.Current.CancellationToken);
        Assert.Equal(pieces, tree.Pieces.Length);
        Assert.Equal(metres + (pieces * Slack), tree.Metres, 9);
        Assert.Equal(tree.Metres, tree.AtLeastMetres, 9);
    }

    [Fact]
    public void A_break_in_a_chain_darkens_all_beyond_it_and_in_a_pair_of_its_own_one_house()
    {
        var chain = AlongTheStreet.Lay(FeedWay.Chain, Street, TestContext.Current.CancellationToken);
        Assert.Equal(["A", "B", "C"], chain.Beyond(0));
        Assert.Equal(["C"], chain.Beyond(2));
        var own = AlongTheStreet.Lay(FeedWay.OwnPairs, Street, TestContext.Current.CancellationToken);
        Assert.All(Enumerable.Range(0, 3), i => Assert.Single(own.Beyond(i)));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void On_a_grid_of_wireways_every_house_is_fed_once_and_no_pair_before_the_one_that_feeds_it(int seed)
    {
        var random = new Random(seed);
        var lines = Enumerable.Range(0, 5).SelectMany(i => new[]
        {
            new WirewayLine($"x{i}", [new PlanePoint(0, 0.2 * i), new PlanePoint(0.8, 0.2 * i)]),
            new WirewayLine($"y{i}", [new PlanePoint(0.2 * i, 0), new PlanePoint(0.2 * i, 0.8)]),
        });
        ImmutableArray<RouteDemand> houses = [.. Enumerable.Range(0, 14).Select(i => new RouteDemand($"H{i}", new PlanePoint(0.8 * random.NextDouble(), 0.8 * random.NextDouble())))];
        var feeder = new Feeder([.. lines], new PlanePoint(0, 0), new RouteRules(0, 1.4));
        var own = feeder.Lay(FeedWay.OwnPairs, houses, TestContext.Current.CancellationToken);
        foreach (var way in Enum.GetValues<FeedWay>())
        {
            var tree = feeder.Lay(way, houses, TestContext.Current.CancellationToken);
            Assert.Equal(houses.Select(h => h.Building), tree.Ends.Select(e => e.Building));
            var fed = new HashSet<int> { 0 };
            Assert.All(tree.Pieces, p =>
            {
                Assert.Contains(p.From, fed);
                Assert.True(fed.Add(p.To), $"junction {p.To} is fed twice");
            });
            Assert.All(tree.Ends, e => Assert.Contains(e.Junction, fed));
            Assert.True(tree.AtLeastMetres <= tree.Metres + 1e-9);
            Assert.True(way != FeedWay.Trunk || tree.Metres <= own.Metres + 1e-9, "a trunk is never longer than a pair to each house");

            // A drawn line is as long as the pair, where nothing climbs and nothing is left to spare.
            Assert.All(tree.Pieces, p => Assert.Equal(p.Metres, p.Points.Zip(p.Points.Skip(1), (a, b) => a.DistanceTo(b)).Sum(), 6));
        }
    }
}
