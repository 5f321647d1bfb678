using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals.Growth;
using Duskwright.Proposals.Wiring;
using Duskwright.Study;

namespace Duskwright.Proposals.Tests.Wiring;

// A board of 1000 mm by 600 mm, the bank at (800, 300), an inn at (200, 300), a batten of 100 mm by 300 mm between them from (450, 100) to (550, 400).
public class ObstacleTests
{
    private static readonly Scenery Batten = Outline(SceneryKind.Obstacle, (450, 100), (550, 100), (550, 400), (450, 400));

    // By hand: over the corners at (450, 400) and (550, 400), 2·√(250² + 100²) + 100 and 100 of slack; without the batten the straight way with its usual detour, 600·1.4 + 100.
    [Fact]
    public void A_pair_is_led_round_a_batten_where_no_wireway_is_drawn()
    {
        var route = Assert.Single(RouteProposal.Of(Town(Batten)).Edit.Routes);
        Assert.Equal((2 * Math.Sqrt(72500)) + 200, route.Length.Millimetres, 0.5);
        Assert.Equal([Point.At(200, 300), Point.At(450, 400), Point.At(550, 400), Point.At(800, 300)], route.Points);
        Assert.Equal(940, Assert.Single(RouteProposal.Of(Town()).Edit.Routes).Length.Millimetres, 0.5);
    }

    [Fact]
    public void A_batten_from_edge_to_edge_parts_a_house_from_the_bank_and_it_is_named_with_the_gap()
    {
        var proposal = RouteProposal.Of(Town(Outline(SceneryKind.Obstacle, (450, 0), (550, 0), (550, 600), (450, 600))));
        Assert.Empty(proposal.Edit.Routes);
        Assert.StartsWith("The Inn is parted from the bank by obstacles under the board, 600 mm across", Assert.Single(proposal.NoRoute), StringComparison.Ordinal);
    }

    [Fact]
    public void Water_is_gone_round_but_for_a_boat_that_lies_on_it()
    {
        var pond = Outline(SceneryKind.Water, (300, 250), (420, 250), (420, 350), (300, 350));
        var town = Town(Batten, pond);
        Assert.Contains(RouteProposal.Of(town).Edit.Routes[0].Points, p => p == Point.At(300, 350) || p == Point.At(420, 350));
        var boat = new Building { Name = "Punt", Leds = 1, Place = new Placement { At = Point.At(360, 300) } };
        var routes = RouteProposal.Of(town with { Buildings = [.. town.Buildings, boat] }).Edit.Routes;
        Assert.Equal(2, routes.Count);
        Assert.DoesNotContain(routes[0].Points, p => p == Point.At(300, 350));
    }

    [Fact]
    public void All_three_ways_and_a_house_that_comes_later_go_round_it()
    {
        var town = Town(Batten) with
        {
            Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
            SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        };
        var study = TownStudy.Of(town with { Buildings = [.. town.Buildings.Append(town.Buildings[0] with { Name = "Mill", Place = new Placement { At = Point.At(300, 200) } }).Select(b => b with { SwitchGroup = "A" })] });
        var ways = WiringWays.Of(study, TestContext.Current.CancellationToken).Ways!;
        var lines = ways.All.SelectMany(w => w.Groups).SelectMany(g => g.Tree.Pieces).Select(p => p.Points.Select(x => (x.X, x.Y)).ToList()).ToList();
        var later = GrowthProposal.Of(study, new Building { Name = "Forge", Leds = 1, Place = new Placement { At = Point.At(350, 350) } }, TestContext.Current.CancellationToken);
        lines.AddRange(later.Options.Select(o => o.Edit.Pair!.Points.Select(p => (p.X.Metres, p.Y.Metres)).ToList()));
        Assert.True(lines.Count >= 8);

        // No place along any of them lies in the batten, looked at every hundredth of each stretch.
        Assert.All(lines.SelectMany(l => l.Zip(l.Skip(1))), s => Assert.All(Enumerable.Range(0, 101), i =>
        {
            var (x, y) = (s.First.Item1 + (i / 100.0 * (s.Second.Item1 - s.First.Item1)), s.First.Item2 + (i / 100.0 * (s.Second.Item2 - s.First.Item2)));
            Assert.False(x > 0.4501 && x < 0.5499 && y > 0.1001 && y < 0.3999);
        }));
    }

    private static Town Town(params Scenery[] scenery) => new()
    {
        Name = "Battens",
        Board = new Board
        {
            Width = Length.FromMillimetres(1000),
            Depth = Length.FromMillimetres(600),
            Scenery = [.. scenery],
            Bank = new Bank { At = Point.At(800, 300) },
        },
        Buildings = [new Building { Name = "The Inn", Leds = 2, Place = new Placement { At = Point.At(200, 300) } }],
        Wiring = new WiringChoices { Slack = Length.FromMillimetres(100) },
    };

    private static Scenery Outline(SceneryKind kind, params (double X, double Y)[] corners) => new() { Kind = kind, Points = [.. corners.Select(c => Point.At(c.X, c.Y))] };
}
