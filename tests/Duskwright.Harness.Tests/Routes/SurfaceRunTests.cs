using System.Collections.Immutable;
using Duskwright.Harness.Routes;

namespace Duskwright.Harness.Tests.Routes;

public class SurfaceRunTests
{
    private static readonly ImmutableArray<PlanePoint> Inn = Box(0, 0, 0.06, 0.06);

    // By hand: from the middle of a house 60 mm wide to a hole 100 mm off, 30 mm are under the house and 70 are seen.
    [Fact]
    public void What_is_seen_is_the_run_less_what_the_house_stands_on()
    {
        var run = SurfaceRun.Of(new(0.03, 0.03), new(0.13, 0.03), [Inn]);
        Assert.Equal(0.07, run.SeenMetres, 1e-9);
        Assert.InRange(run.LeastSeenMetres, 0.06, 0.07);
        Assert.Equal(0, SurfaceRun.Of(new(0.03, 0.03), new(0.05, 0.03), [Inn]).SeenMetres);
        Assert.Equal(0.1, SurfaceRun.Of(new(0.03, 0.03), new(0.13, 0.03), []).SeenMetres, 1e-9);
    }

    // By hand: the shed lies beside the way from 70 to 125 mm, 10 mm behind it; under it 10 mm before and 5 after are seen, with cells of 5 mm a little more.
    [Fact]
    public void A_run_under_the_next_house_shows_less_than_the_straight_one()
    {
        var shed = Box(0.07, 0.04, 0.055, 0.06);
        var run = SurfaceRun.Of(new(0.03, 0.03), new(0.13, 0.03), [Inn, shed]);
        Assert.Equal(0.07, run.SeenMetres, 1e-9);
        Assert.InRange(run.LeastSeenMetres, 0.01, 0.03);
        Assert.Equal([0, 1], run.Under);
    }

    [Fact]
    public void No_run_is_said_to_show_more_than_the_straight_one()
    {
        var random = new Random(9);
        for (var scene = 0; scene < 40; scene++)
        {
            PlanePoint At() => new(random.Next(0, 30) / 100.0, random.Next(0, 30) / 100.0);
            var run = SurfaceRun.Of(At(), At(), [.. Enumerable.Range(0, 4).Select(_ => Box(random.Next(0, 30) / 100.0, random.Next(0, 30) / 100.0, random.Next(2, 10) / 100.0, random.Next(2, 10) / 100.0))]);
            Assert.InRange(run.LeastSeenMetres, 0, run.SeenMetres);
        }
    }

    private static ImmutableArray<PlanePoint> Box(double x, double y, double width, double depth) => [new(x, y), new(x + width, y), new(x + width, y + depth), new(x, y + depth)];
}
