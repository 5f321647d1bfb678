using System.Collections.Immutable;
using Duskwright.Harness.Routes;
using NetTopologySuite.Geometries;

namespace Duskwright.Harness.Tests.Routes;

public class FreeRouterTests
{
    private static readonly GeometryFactory Shapes = new();

    // By geometry: round a square leg of 0.2 m standing midway on a run of 1 m, over one side: two hypotenuses of 0.4 by 0.1 and the side.
    [Fact]
    public void Wire_bends_round_the_corners_of_a_leg()
    {
        var run = new FreeRouter(new FreeArea([], [Box(0.4, -0.1, 0.6, 0.1)])).Between(new(0, 0), new(1, 0));
        Assert.Equal((2 * Math.Sqrt(0.17)) + 0.2, run.Metres, 1e-12);
        Assert.Equal(4, run.Points.Length);
    }

    [Fact]
    public void Wire_may_run_along_a_batten_but_not_through_it()
    {
        var router = new FreeRouter(new FreeArea([], [Box(0, 0, 1, 0.1)]));
        Assert.Equal(1, router.Between(new(0, 0), new(1, 0)).Metres, 1e-12);
        Assert.Equal((2 * Math.Sqrt(0.26)) + 0.1, router.Between(new(0.5, -0.1), new(0.5, 0.2)).Metres, 1e-12);
    }

    [Fact]
    public void A_house_walled_in_by_battens_has_no_run()
    {
        ImmutableArray<ImmutableArray<PlanePoint>> ring = [Box(0, 0, 1, 0.1), Box(0, 0.9, 1, 1), Box(0, 0, 0.1, 1), Box(0.9, 0, 1, 1)];
        var run = new FreeRouter(new FreeArea([], ring)).Between(new(0.5, 0.5), new(2, 0.5));
        Assert.Empty(run.Points);
        Assert.True(double.IsPositiveInfinity(run.Metres));
    }

    [Fact]
    public void Wire_stays_inside_the_outline_of_the_board()
    {
        // An L-shaped board: the inner corner at (1, 1) is bent round.
        ImmutableArray<PlanePoint> board = [new(0, 0), new(2, 0), new(2, 1), new(1, 1), new(1, 2), new(0, 2)];
        Assert.Equal(2 * Math.Sqrt(1.25), new FreeRouter(new FreeArea(board, [])).Between(new(0.5, 2), new(2, 0.5)).Metres, 1e-12);
    }

    // Independent: every corner pair tested by the DE-9IM relation of a geometry library, all pairs by Floyd and Warshall.
    [Fact]
    public void A_thousand_random_boards_agree_with_another_way_of_computing_them()
    {
        var random = new Random(20);
        for (var scene = 0; scene < 1000; scene++)
        {
            ImmutableArray<ImmutableArray<PlanePoint>> obstacles = [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => Shape(random))];
            var (from, to) = (Point(random), Point(random));
            var expected = AllPairs(obstacles, from, to);
            var run = new FreeRouter(new FreeArea([], obstacles)).Between(from, to);
            Assert.True(expected == run.Metres || Math.Abs(expected - run.Metres) < 1e-9, $"scene {scene}: {expected} against {run.Metres}");
            Assert.True(run.Points.Zip(run.Points.Skip(1), (a, b) => !ThroughAny(obstacles, a, b)).All(clear => clear), $"scene {scene} runs through an obstacle");
        }
    }

    private static PlanePoint Point(Random random) => new(random.Next(0, 1001) / 1000.0, random.Next(0, 1001) / 1000.0);

    // Triangles and boxes, on whole millimetres so that corners do meet and lines do touch.
    private static ImmutableArray<PlanePoint> Shape(Random random)
    {
        if (random.Next(2) == 0)
        {
            var (x, y) = (random.Next(0, 16) / 20.0, random.Next(0, 16) / 20.0);
            return Box(x, y, x + (random.Next(1, 8) / 20.0), y + (random.Next(1, 8) / 20.0));
        }

        while (true)
        {
            ImmutableArray<PlanePoint> corners = [Point(random), Point(random), Point(random)];
            if (Ring([corners]).Single().Area > 0.001)
            {
                return corners;
            }
        }
    }

    private static ImmutableArray<PlanePoint> Box(double left, double front, double right, double back) =>
        [new(left, front), new(right, front), new(right, back), new(left, back)];

    private static List<Polygon> Ring(ImmutableArray<ImmutableArray<PlanePoint>> loops) =>
        [.. loops.Select(l => Shapes.CreatePolygon([.. l.Append(l[0]).Select(p => new Coordinate(p.X, p.Y))]))];

    private static bool ThroughAny(ImmutableArray<ImmutableArray<PlanePoint>> obstacles, PlanePoint a, PlanePoint b)
    {
        Geometry piece = a == b ? Shapes.CreatePoint(new Coordinate(a.X, a.Y)) : Shapes.CreateLineString([new Coordinate(a.X, a.Y), new Coordinate(b.X, b.Y)]);
        return Ring(obstacles).Exists(o => o.Relate(piece, "T********"));
    }

    private static double AllPairs(ImmutableArray<ImmutableArray<PlanePoint>> obstacles, PlanePoint from, PlanePoint to)
    {
        PlanePoint[] points = [from, to, .. obstacles.SelectMany(o => o)];
        var metres = new double[points.Length, points.Length];
        for (var i = 0; i < points.Length; i++)
        {
            for (var j = 0; j < points.Length; j++)
            {
                metres[i, j] = i == j ? 0 : j < i ? metres[j, i] : ThroughAny(obstacles, points[i], points[j]) ? double.PositiveInfinity : points[i].DistanceTo(points[j]);
            }
        }

        for (var k = 0; k < points.Length; k++)
        {
            for (var i = 0; i < points.Length; i++)
            {
                for (var j = 0; j < points.Length; j++)
                {
                    metres[i, j] = Math.Min(metres[i, j], metres[i, k] + metres[k, j]);
                }
            }
        }

        return metres[0, 1];
    }
}
