using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests.Edits;

public sealed class GroundTests
{
    private static readonly Board Board = new()
    {
        Width = Length.FromMillimetres(600),
        Depth = Length.FromMillimetres(400),
        Bank = new Bank { At = Point.At(500, 20) },
        FeedHoles = [new FeedHole { Id = "h1", At = Point.At(100, 120) }],
        Wireways = [new Wireway { Id = "w1", Points = [Point.At(100, 120), Point.At(500, 20)] }],
    };

    private static readonly Town Town = new()
    {
        Name = "Fenhithe",
        Board = Board,
        Buildings =
        [
            new Building { Name = "Eel house", Leds = 2, FeedHole = "h1", Place = new Placement { At = Point.At(100, 100), Width = Length.FromMillimetres(50), Rotation = Angle.FromDegrees(90) } },
            new Building { Name = "Reed barn", Leds = 1, Place = new Placement { At = Point.At(300, 100) } },
        ],
        Routes = [Route("eel-house"), Route("reed-barn")],
    };

    [Fact]
    public void A_hole_that_moves_takes_only_the_routes_through_it_away()
    {
        var after = new DrawGround(Board with { FeedHoles = [Board.FeedHoles[0] with { At = Point.At(110, 120) }] }, "Move").Apply(Town);
        Assert.Equal(["reed-barn"], after.Routes.Select(r => r.Building));
        Assert.Equal("h1", after.Buildings[0].FeedHole);
    }

    [Fact]
    public void A_hole_that_is_filled_is_no_houses_hole_any_more()
    {
        var after = new DrawGround(Board with { FeedHoles = [] }, "Less").Apply(Town);
        Assert.Null(after.Buildings[0].FeedHole);
        Assert.Empty(TownChecks.Of(after));
    }

    [Fact]
    public void An_obstacle_or_another_bank_asks_for_new_routes_and_a_hatch_does_not()
    {
        ItemList<Point> outline = [Point.At(200, 60), Point.At(220, 60), Point.At(220, 80)];
        Assert.Empty(new DrawGround(Board with { Scenery = [new Scenery { Kind = SceneryKind.Obstacle, Points = outline }] }, "More").Apply(Town).Routes);
        Assert.Empty(new DrawGround(Board with { Bank = new Bank { At = Point.At(100, 20) } }, "Move").Apply(Town).Routes);
        Assert.Equal(2, new DrawGround(Board with { Scenery = [new Scenery { Kind = SceneryKind.Hatch, Points = outline }] }, "More").Apply(Town).Routes.Count);
    }

    [Fact]
    public void What_a_laid_pair_runs_through_stays()
    {
        var laid = Town with { Routes = [Route("eel-house") with { Laid = true, Wireways = ["w1"] }] };
        Assert.Contains("Hole h1 stays", Assert.Single(new DrawGround(Board with { FeedHoles = [] }, "Less").Problems(laid)).Message, StringComparison.Ordinal);
        Assert.Contains("Wireway w1 stays", Assert.Single(new DrawGround(Board with { Wireways = [] }, "Less").Problems(laid)).Message, StringComparison.Ordinal);
        Assert.Contains("The bank stays", Assert.Single(new DrawGround(Board with { Bank = null }, "Less").Problems(laid)).Message, StringComparison.Ordinal);
        Assert.Empty(new DrawGround(Board with { FeedHoles = Board.FeedHoles.Add(new FeedHole { Id = "h2", At = Point.At(1, 1) }) }, "More").Problems(laid));
    }

    [Fact]
    public void A_terrace_stands_wall_to_wall_along_its_front()
    {
        var after = new AddTerrace(Town.Buildings[0], 3).Apply(Town);
        var row = after.Buildings.Where(b => b.Name.StartsWith("Eel house", StringComparison.Ordinal)).ToList();
        Assert.Equal(["Eel house", "Eel house 2", "Eel house 3"], row.Select(b => b.Name));

        // Turned by a quarter, its front runs to the back of the board.
        Assert.Equal([100, 150, 200], row.Select(b => b.Place!.At.Y.Millimetres));
        Assert.All(row, b => Assert.Equal(100, b.Place!.At.X.Millimetres));
        Assert.Empty(TownChecks.Of(after));
    }

    private static Route Route(string building) => new() { Building = building, Points = [Point.At(100, 100), Point.At(500, 20)], Length = Length.FromMillimetres(700) };
}
