using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals.Growth;
using Duskwright.Proposals.Wiring;
using Duskwright.Study;

namespace Duskwright.Proposals.Tests.Wiring;

// A board of 1000 mm by 600 mm, the bank at (900, 100), an inn at (100, 500). Wireway w runs from the bank to the left and then up to the inn: (900, 100), (100, 100), (100, 500).
public class FreeAreaTests
{
    private static readonly Scenery Whole = Outline(SceneryKind.Free, (50, 50), (950, 50), (950, 550), (50, 550));

    // By hand: along the wireway 800 + 400; straight √(800² + 400²); 100 of slack each.
    [Fact]
    public void A_pair_goes_straight_across_a_free_area_and_is_in_no_wireway()
    {
        Assert.Equal(1300, Assert.Single(RouteProposal.Of(Town()).Edit.Routes).Length.Millimetres, 0.5);
        var route = Assert.Single(RouteProposal.Of(Town(Whole)).Edit.Routes);
        Assert.Equal(Math.Sqrt(800_000) + 100, route.Length.Millimetres, 0.5);
        Assert.Equal([Point.At(100, 500), Point.At(900, 100)], route.Points);
        Assert.Empty(route.Wireways);
    }

    // By hand: the area from x = 300 on meets the wireway at (300, 100), where nothing is won; one up to x = 300 is left at (300, 100): √(200² + 400²) + 600.
    [Fact]
    public void It_leaves_the_area_where_a_wireway_crosses_its_edge()
    {
        var route = Assert.Single(RouteProposal.Of(Town(Outline(SceneryKind.Free, (50, 50), (300, 50), (300, 550), (50, 550)))).Edit.Routes);
        Assert.Equal(Math.Sqrt(200_000) + 700, route.Length.Millimetres, 0.5);
        Assert.Equal([Point.At(100, 500), Point.At(300, 100), Point.At(900, 100)], route.Points);
        Assert.Equal(["w"], route.Wireways);
    }

    // By hand: a slanting edge from (200, 50) to (400, 550) crosses the wireway at (220, 100): √(120² + 400²) + 680.
    [Fact]
    public void A_slanting_edge_is_met_as_well()
    {
        var route = Assert.Single(RouteProposal.Of(Town(Outline(SceneryKind.Free, (50, 50), (200, 50), (400, 550), (50, 550)))).Edit.Routes);
        Assert.Equal(Math.Sqrt(174_400) + 780, route.Length.Millimetres, 0.5);
    }

    // By hand: the straight line passes (500, 300); over the corner (400, 200) of the batten √(300² + 300²) + √(500² + 100²), over (600, 400) the same.
    [Fact]
    public void A_batten_in_it_is_gone_round()
    {
        var route = Assert.Single(RouteProposal.Of(Town(Whole, Outline(SceneryKind.Obstacle, (400, 200), (600, 200), (600, 400), (400, 400)))).Edit.Routes);
        Assert.Equal(Math.Sqrt(180_000) + Math.Sqrt(260_000) + 100, route.Length.Millimetres, 0.5);
    }

    [Fact]
    public void With_no_wireway_a_house_far_from_the_area_is_named_with_the_gap()
    {
        var town = Town(Outline(SceneryKind.Free, (400, 50), (950, 50), (950, 550), (400, 550)));
        var proposal = RouteProposal.Of(town with { Board = town.Board! with { Wireways = [] } });
        Assert.StartsWith("The Inn lies 300 mm from the nearest wireway or free area", Assert.Single(proposal.NoRoute), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_way_to_wire_and_a_later_house_may_use_it()
    {
        var town = Town(Whole) with
        {
            Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
            SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        };
        var study = TownStudy.Of(town with { Buildings = [.. town.Buildings.Append(town.Buildings[0] with { Name = "Mill", Place = new Placement { At = Point.At(300, 500) } }).Select(b => b with { SwitchGroup = "A" })] });
        var ways = WiringWays.Of(study, TestContext.Current.CancellationToken).Ways!;

        // By hand: √(800² + 400²) and √(600² + 400²) for own pairs; the shorter of them and 200 between the houses for the chain; the trunk is no longer than the chain.
        Assert.Equal(0.8944 + 0.7211, ways.OwnPairs.Groups[0].Tree.Pieces.Sum(Line), 0.001);
        Assert.Equal(0.7211 + 0.2, ways.Chains.Groups[0].Tree.Pieces.Sum(Line), 0.001);
        Assert.InRange(ways.Trunks.Groups[0].Tree.Pieces.Sum(Line), 0.8944, 0.9212);

        var later = GrowthProposal.Of(study, new Building { Name = "Forge", Leds = 1, Place = new Placement { At = Point.At(900, 500) } }, TestContext.Current.CancellationToken);
        Assert.Contains(later.Options, o => o.Edit.Pair is { } pair && pair.Points.Count == 2 && Math.Abs(pair.Length.Millimetres - 500) < 0.5);
        Assert.All(later.Options, o => Assert.DoesNotContain("", o.Edit.Pair!.Wireways));
    }

    [Fact]
    public void A_way_found_across_it_is_dropped_when_the_area_goes_and_a_laid_one_stays()
    {
        var town = Town(Whole);
        var routed = RouteProposal.Of(town).Edit.Apply(town);
        var without = new DrawGround(town.Board! with { Scenery = [] }, "A free area less");
        Assert.Empty(without.Apply(routed).Routes);
        Assert.Single(without.Apply(routed with { Routes = routed.Routes.Select(r => r with { Laid = true }).ToItemList() }).Routes);
    }

    private static double Line(Harness.Feeds.FeedPiece piece) => piece.Points.Zip(piece.Points.Skip(1), (a, b) => a.DistanceTo(b)).Sum();

    private static Town Town(params Scenery[] scenery) => new()
    {
        Name = "Open ground",
        Board = new Board
        {
            Width = Length.FromMillimetres(1000),
            Depth = Length.FromMillimetres(600),
            Scenery = [.. scenery],
            Wireways = [new Wireway { Id = "w", Points = [Point.At(900, 100), Point.At(100, 100), Point.At(100, 500)] }],
            Bank = new Bank { At = Point.At(900, 100) },
        },
        Buildings = [new Building { Name = "The Inn", Leds = 2, Place = new Placement { At = Point.At(100, 500) } }],
        Wiring = new WiringChoices { Slack = Length.FromMillimetres(100) },
    };

    private static Scenery Outline(SceneryKind kind, params (double X, double Y)[] corners) => new() { Kind = kind, Points = corners.Select(c => Point.At(c.X, c.Y)).ToItemList() };
}
