using System.Collections.Immutable;
using Duskwright.Harness.Feeds;
using Duskwright.Harness.Growth;
using Duskwright.Harness.Routes;
using NetTopologySuite.Geometries;

namespace Duskwright.Harness.Tests.Routes;

public class ObstacleRoutesTests
{
    private static readonly ImmutableArray<PlanePoint> Board = [new(0, 0), new(1, 0), new(1, 1), new(0, 1)];
    private static readonly RouteDemand Mill = new("Mill", new PlanePoint(0.2, 0.5));
    private static readonly PlanePoint Bank = new(0.8, 0.5);

    // By hand: over the corners (0.45, 0.6) and (0.55, 0.6), 2·√(0.25² + 0.1²) + 0.1 and 0.1 of slack.
    [Fact]
    public void Where_no_wireway_is_drawn_a_pair_goes_taut_round_a_batten()
    {
        var answer = Router.Route([], [Mill], Bank, Rules(Box(0.45, 0.3, 0.1, 0.3))).Single();
        Assert.Equal((2 * Math.Sqrt(0.0625 + 0.01)) + 0.2, answer.LengthMetres, 1e-9);
        Assert.Equal([new(0.2, 0.5), new(0.45, 0.6), new(0.55, 0.6), new(0.8, 0.5)], answer.Points);
    }

    // By hand, for a house at (0.21, 0.5): to the leg's corner (0.3, 0.45), a tenth straight down, half a metre along.
    [Fact]
    public void The_way_from_a_house_to_its_wireway_goes_round_a_leg()
    {
        ImmutableArray<WirewayLine> ways = [new("front", [new PlanePoint(0, 0.35), new PlanePoint(1, 0.35)])];
        var answer = Router.Route(ways, [new RouteDemand("Mill", new PlanePoint(0.21, 0.5))], new PlanePoint(0.8, 0.35), Rules(Box(0.1, 0.4, 0.2, 0.05)) with { MostStubMetres = 0.5 }).Single();
        Assert.Equal(Math.Sqrt(0.0081 + 0.0025) + 0.1 + 0.5 + 0.1, answer.LengthMetres, 1e-9);
        Assert.Equal(["front"], answer.Wireways);
    }

    [Fact]
    public void What_cannot_be_reached_is_told_by_its_name_and_the_gap()
    {
        ImmutableArray<PlanePoint> wall = [new(0.45, -0.1), new(0.55, -0.1), new(0.55, 1.1), new(0.45, 1.1)];
        Assert.Equal(
            "Mill is parted from the bank by obstacles under the board, 600 mm across where they are narrowest; drill through there or draw a wireway",
            Router.Route([], [Mill], Bank, Rules(wall)).Single().NoRoute);
        Assert.StartsWith("Mill comes through the board onto an obstacle", Router.Route([], [Mill], Bank, Rules(Box(0.1, 0.4, 0.2, 0.2))).Single().NoRoute, StringComparison.Ordinal);
        Assert.StartsWith("The bank lies over an obstacle", Router.Route([], [Mill], Bank, Rules(Box(0.7, 0.4, 0.2, 0.2))).Single().NoRoute, StringComparison.Ordinal);
        ImmutableArray<WirewayLine> ways = [new("right", [new PlanePoint(0.9, 0), new PlanePoint(0.9, 1)])];
        Assert.StartsWith("Mill is shut in by obstacles", Router.Route(ways, [Mill], new PlanePoint(0.9, 0.1), Rules(wall)).Single().NoRoute, StringComparison.Ordinal);
    }

    [Fact]
    public void No_wire_goes_between_battens_that_are_butted_and_it_does_through_a_gap()
    {
        double Metres(double gap) => Router.Route([], [Mill], Bank, Rules(Box(0.45, -0.1, 0.1, 0.6), Box(0.45, 0.5 + gap, 0.1, 0.4))).Single().LengthMetres;
        Assert.True(Metres(0) > Metres(0.005) + 0.1);
        Assert.Equal(0.7, Metres(0.005), 0.001);
    }

    [Fact]
    public void A_pair_never_goes_through_an_obstacle()
    {
        var random = new Random(17);
        var (routed, failed) = (0, 0);
        for (var scene = 0; scene < 300; scene++)
        {
            PlanePoint At() => new(random.Next(2, 99) / 100.0, random.Next(2, 99) / 100.0);
            ImmutableArray<PlanePoint>[] boxes = [.. Enumerable.Range(0, random.Next(1, 7)).Select(_ => Box(random.Next(0, 90) / 100.0, random.Next(0, 90) / 100.0, random.Next(2, 40) / 100.0, random.Next(2, 20) / 100.0))];
            var rules = Rules(boxes) with { MostStubMetres = 2 };
            ImmutableArray<WirewayLine> ways = scene % 2 == 0 ? [] : [new("a", [At(), At(), At()]), new("b", [At(), At()])];
            RouteDemand[] houses = [new("one", At()), new("two", At())];
            foreach (var answer in Router.Route(ways, [.. houses], At(), rules))
            {
                (routed, failed) = answer.NoRoute is null ? (routed + 1, failed) : (routed, failed + 1);
                foreach (var (a, b) in answer.Points.Zip(answer.Points.Skip(1)))
                {
                    Assert.True(InWay(ways, a, b) || !Through(boxes, a, b), $"scene {scene}: from {a} to {b}");
                }
            }
        }

        Assert.True(routed > 200 && failed > 20);
    }

    [Fact]
    public void The_nearest_place_of_a_wireway_is_no_farther_than_any_place_of_it()
    {
        var random = new Random(5);
        for (var scene = 0; scene < 60; scene++)
        {
            PlanePoint At() => new(random.Next(2, 99) / 100.0, random.Next(2, 99) / 100.0);
            var router = new FreeRouter(new FreeArea(Board, [.. Enumerable.Range(0, 4).Select(_ => Box(random.Next(0, 90) / 100.0, random.Next(0, 90) / 100.0, random.Next(2, 40) / 100.0, random.Next(2, 20) / 100.0))]));
            var (from, a, b) = (At(), At(), At());
            var (run, _) = router.Nearest(from, [(a, b)]);
            var least = Enumerable.Range(0, 101).Min(i => router.Between(from, new PlanePoint(a.X + (i / 100.0 * (b.X - a.X)), a.Y + (i / 100.0 * (b.Y - a.Y)))).Metres);
            Assert.True(run.Metres <= least + 3e-6 || (double.IsInfinity(run.Metres) && double.IsInfinity(least)), $"scene {scene}: {run.Metres} against {least}");
            if (!run.Points.IsEmpty)
            {
                Assert.Equal(router.Between(from, run.Points[^1]).Metres, run.Metres, 1e-9);
                Assert.True(run.Points[^1].DistanceTo(run.Points[^1].NearestOn(a, b)) < 1e-9);
            }
        }
    }

    [Theory]
    [InlineData(FeedWay.OwnPairs)]
    [InlineData(FeedWay.Trunk)]
    [InlineData(FeedWay.Chain)]
    public void Every_way_to_feed_houses_goes_round(FeedWay way)
    {
        var box = Box(0.45, 0.3, 0.1, 0.3);
        var tree = new Feeder([], Bank, Rules(box)).Lay(way, [Mill, new("Inn", new PlanePoint(0.3, 0.4)), new("Forge", new PlanePoint(0.6, 0.2))], TestContext.Current.CancellationToken);
        Assert.Equal(["Mill", "Inn", "Forge"], tree.Ends.Select(e => e.Building));
        Assert.All(tree.Pieces, p => Assert.All(p.Points.Zip(p.Points.Skip(1)), x => Assert.False(Through([box], x.First, x.Second))));
        var added = TieInGround.Runs([], new("New", new PlanePoint(0.35, 0.45)), [new TiePoint("bank", Bank)], [new TieLine("T", [Bank, new PlanePoint(0.8, 0.9)])], Rules(box));
        Assert.All(added.SelectMany(r => r.Points.Zip(r.Points.Skip(1))), x => Assert.False(Through([box], x.First, x.Second)));
        Assert.Equal(2, added.Length);
    }

    private static RouteRules Rules(params ImmutableArray<PlanePoint>[] obstacles) => new(0.1, 1.4) { Around = new FreeArea(Board, [.. obstacles]).Joined() };

    private static ImmutableArray<PlanePoint> Box(double x, double y, double width, double depth) => [new(x, y), new(x + width, y), new(x + width, y + depth), new(x, y + depth)];

    private static bool InWay(ImmutableArray<WirewayLine> ways, PlanePoint a, PlanePoint b) => ways.SelectMany(w => w.Points.Zip(w.Points.Skip(1)))
        .Any(s => a.DistanceTo(a.NearestOn(s.First, s.Second)) < 1e-3 && b.DistanceTo(b.NearestOn(s.First, s.Second)) < 1e-3);

    // Apart from the router's own test: the stretch meets the box shrunk by a hundredth of a millimetre.
    private static bool Through(IEnumerable<ImmutableArray<PlanePoint>> boxes, PlanePoint a, PlanePoint b)
    {
        var line = new LineString([new Coordinate(a.X, a.Y), new Coordinate(b.X, b.Y)]);
        return boxes.Any(o => new GeometryFactory().ToGeometry(new Envelope(o[0].X + 1e-5, o[2].X - 1e-5, o[0].Y + 1e-5, o[2].Y - 1e-5)).Intersects(line));
    }
}
