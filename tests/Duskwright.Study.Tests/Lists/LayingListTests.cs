using Duskwright.Harness.Laying;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Study.Tests.Lists;

public class LayingListTests
{
    [Fact]
    public void Every_house_that_is_not_glued_is_set_down_once_and_at_the_end_all_stand()
    {
        var laying = TownStudy.Of(Demo.Saltmarrow).Laying;
        var placed = Demo.Saltmarrow.Buildings.Where(b => b.Place is not null).ToList();
        Assert.Equal(placed.Where(b => b.State != BuildingState.Fixed).Select(b => b.Key).Order(), laying.Rows.Where(r => r.Act == LayingAct.SetDown).Select(r => r.Building).Order());
        Assert.Equal(placed.Where(b => b.State == BuildingState.Fixed).Select(b => b.Key).Order(StringComparer.Ordinal), laying.After(0).Standing);
        Assert.Equal(placed.Select(b => b.Key).Order(StringComparer.Ordinal), laying.After(laying.Rows.Count).Standing);
    }

    [Fact]
    public void Two_houses_over_each_others_holes_are_a_knot_with_its_remedy()
    {
        var laying = TownStudy.Of(Two(BuildingState.Shell)).Laying;
        Assert.Equal(["Pull the pair of Inn through hole 1 and leave the house beside its place", "Pull the pair of Mill through hole 2 and set it down", "Set Inn down"], laying.Rows.Select(r => r.Do));
        Assert.Contains("Pull the pair of Inn first and keep the house beside its place, not glued", Assert.Single(laying.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void A_glued_house_over_a_hole_asks_for_another_hole() =>
        Assert.Equal("Mill is glued over the way of Inn: give Inn another hole, clear of it.", Assert.Single(TownStudy.Of(Two(BuildingState.Fixed)).Laying.Notes));

    [Fact]
    public void A_neighbour_that_stands_over_the_way_is_lifted_out_for_a_pair_and_set_back()
    {
        var town = Two(BuildingState.Fitted) with { Routes = [new Route { Building = "mill", Points = [], Length = Length.FromMetres(1), Laid = true }] };
        Assert.Equal(
            ["Lift Mill out; its pair stays in its hole", "Pull the pair of Inn through hole 1 and set it down", "Set Mill back"],
            TownStudy.Of(town).Laying.Around("inn").Select(r => r.Do));
        Assert.Empty(TownStudy.Of(town).Laying.Around("nowhere"));
    }

    [Fact]
    public void A_house_over_anothers_way_must_stay_to_lift_off_and_a_glued_one_cannot()
    {
        Assert.Equal(["inn", "mill"], TownStudy.Of(Two(BuildingState.Shell)).Laying.Removable.Select(h => h.Building).Order());
        Assert.Equal(["inn"], TownStudy.Of(Two(BuildingState.Fixed)).Laying.Removable.Select(h => h.Building));
        var lifted = Two(BuildingState.Fitted) with { Routes = [new Route { Building = "mill", Points = [], Length = Length.FromMetres(1), Laid = true }] };
        Assert.Equal(
            "Mill stands over the way of Inn, is lifted in step 1 and set back in step 3: glued down, it shuts that pair in for good. Leave it to lift off.",
            TownStudy.Of(lifted).Laying.Removable.Single(h => h.Building == "mill").Words);
    }

    // The hole of each house lies under the other.
    private static Town Two(BuildingState mill)
    {
        static Placement At(double x) => new() { At = Point.At(x, 100), Width = Length.FromMillimetres(60), Depth = Length.FromMillimetres(60) };
        return new Town
        {
            Name = "Two",
            Board = new Board
            {
                Width = Length.FromMillimetres(400),
                Depth = Length.FromMillimetres(200),
                Bank = new Bank { At = Point.At(200, 10) },
                FeedHoles = [new FeedHole { Id = "1", At = Point.At(300, 100) }, new FeedHole { Id = "2", At = Point.At(100, 100) }],
            },
            Buildings =
            [
                new Building { Name = "Inn", Leds = 1, FeedHole = "1", Place = At(100) },
                new Building { Name = "Mill", Leds = 1, FeedHole = "2", Place = At(300), State = mill },
            ],
        };
    }
}
