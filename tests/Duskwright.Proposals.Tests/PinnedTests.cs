using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;
using Duskwright.Study;

namespace Duskwright.Proposals.Tests;

/// <summary>What the maker has decided, no suggestion changes: a house's pack, the wireway of its pair, a hole that is shut.</summary>
public class PinnedTests
{
    [Fact]
    public void A_house_that_is_to_stay_on_a_pack_stays_there_when_all_is_shared_anew()
    {
        var town = Row();
        var shared = SharingProposal.Of(town, town.Supplies[0], 0, TestContext.Current.CancellationToken).Edit!.Apply(town);
        Assert.Equal("2", SupplyOf(shared, "house-1"));
        Assert.Equal("1", SupplyOf(shared, "house-3"));
    }

    [Fact]
    public void A_pack_that_cannot_carry_what_is_to_stay_on_it_is_named_and_gets_nothing_more()
    {
        var town = Row();
        var crowded = town with { Buildings = town.Buildings.Select(b => b with { Leds = 80, Pack = b.Key == "house-2" ? null : "2" }).ToItemList() };
        var proposal = SharingProposal.Of(crowded, town.Supplies[0], 0, TestContext.Current.CancellationToken);
        Assert.Contains("What is to stay on pack 2 takes", Assert.Single(proposal.Notes), StringComparison.Ordinal);
        Assert.Equal("1", SupplyOf(proposal.Edit!.Apply(crowded), "house-2"));
    }

    [Fact]
    public void A_house_on_another_pack_than_it_is_to_stay_on_is_told()
    {
        var finding = Assert.Single(TownStudy.Of(Row()).Findings, f => f.Rule == "on-another-pack");
        Assert.Equal("House 1 is to stay on pack 2 and hangs on pack 1.", finding.Text);
    }

    // By hand: the bank at the near left; the spine leads straight to the houses, the loop goes round behind.
    [Fact]
    public void A_pair_goes_along_the_wireway_that_is_said_and_its_old_route_is_dropped()
    {
        var town = RouteProposal.Of(Row()).Edit.Apply(Row());
        Assert.Equal(["spine"], town.Routes.First(r => r.Building == "house-2").Wireways);
        var said = new LeadPair("house-2", null, "loop", "round").Apply(town);
        Assert.DoesNotContain(said.Routes, r => r.Building == "house-2");
        var again = Assert.Single(RouteProposal.Of(said).Edit.Routes, r => r.Building == "house-2");
        Assert.Contains("loop", again.Wireways);
        Assert.True(again.Length.Metres > town.Routes.First(r => r.Building == "house-2").Length.Metres);
    }

    [Fact]
    public void A_pair_that_is_laid_is_not_led_another_way()
    {
        var town = RouteProposal.Of(Row()).Edit.Apply(Row());
        var laid = town with { Routes = town.Routes.Select(r => r with { Laid = true }).ToItemList() };
        Assert.Equal("The pair of House 2 is laid: it stays where it is.", Assert.Single(new LeadPair("house-2", null, "loop", "round").Problems(laid)).Message);
        Assert.Empty(new LeadPair("house-2", null, "loop", "round").Problems(town));
    }

    [Fact]
    public void No_pair_is_sent_through_a_hole_that_is_shut_and_the_nearest_open_one_is_named()
    {
        var town = RouteProposal.Of(Row()).Edit.Apply(Row());
        var shut = new DrawGround(town.Board! with { FeedHoles = town.Board.FeedHoles.Select(h => h.Id == "h1" ? h with { Shut = true } : h).ToItemList() }, "shut").Apply(town);
        Assert.DoesNotContain(shut.Routes, r => r.Building == "house-1");
        var proposal = RouteProposal.Of(shut);
        Assert.DoesNotContain(proposal.Edit.Routes, r => r.Building == "house-1");
        Assert.Equal("House 1: hole h1 is shut; the nearest open one is h2, 100 mm away.", Assert.Single(proposal.NoRoute));
    }

    private static string? SupplyOf(Town town, string house) => town.SwitchGroups.First(g => g.Id == town.Buildings.First(b => b.Key == house).SwitchGroup).Supply;

    private static Town Row() => new()
    {
        Name = "Row",
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }, new Supply { Id = "2", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Board = new Board
        {
            Width = Length.FromMillimetres(1000),
            Depth = Length.FromMillimetres(800),
            Bank = new Bank { At = Point.At(50, 50) },
            Wireways = [new Wireway { Id = "spine", Points = [Point.At(50, 50), Point.At(900, 50)], CapacityPairs = 40 }, new Wireway { Id = "loop", Points = [Point.At(50, 50), Point.At(50, 600), Point.At(900, 600), Point.At(900, 50)], CapacityPairs = 40 }],
            FeedHoles = [new FeedHole { Id = "h1", At = Point.At(400, 120) }, new FeedHole { Id = "h2", At = Point.At(500, 100) }],
        },
        Buildings = Enumerable.Range(1, 3).Select(i => new Building
        {
            Name = $"House {i}",
            Leds = 2,
            SwitchGroup = "A",
            Pack = i == 1 ? "2" : i == 3 ? "1" : null,
            FeedHole = i == 1 ? "h1" : null,
            Place = new Placement { At = Point.At(300 + (100 * i), 100), Width = Length.FromMillimetres(50), Depth = Length.FromMillimetres(50) },
        }).ToItemList(),
    };
}
