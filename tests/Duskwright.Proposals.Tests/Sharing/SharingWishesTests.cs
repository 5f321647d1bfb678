using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals.Sharing;

namespace Duskwright.Proposals.Tests.Sharing;

/// <summary>What a maker asks of a sharing beside the fewest packs.</summary>
public class SharingWishesTests
{
    [Fact]
    public void Scenes_and_switches_of_the_harbour_stay_what_they_are_when_it_is_shared_anew()
    {
        var town = TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"))).Town!;
        Assert.NotEmpty(town.Scenes);
        var proposal = Share(town, new SharingWishes { SpareShare = 0 });
        Assert.Null(proposal.Why);
        var shared = proposal.Edit!.Apply(town);
        Assert.Empty(TownChecks.Of(shared));
        Assert.Equal(town.SwitchGroups.Select(g => g.Id), shared.SwitchGroups.Select(g => g.Id));
        Assert.Equal(town.Buildings.Select(b => b.SwitchGroup), shared.Buildings.Select(b => b.SwitchGroup));
        Assert.Equal(town.Scenes, shared.Scenes);
    }

    // A law: whatever single pack fails, of every house and its nearest neighbour in a row of couples one stays lit, and so half of each row.
    [Fact]
    public void Half_of_each_street_stays_lit_when_any_one_pack_fails()
    {
        var town = Couples(12);
        var proposal = Share(town, new SharingWishes { SpareShare = 0, NeighboursApart = true });
        var supply = SupplyOf(proposal.Edit!.Apply(town));
        foreach (var failed in supply.Values.Distinct())
        {
            Assert.All(town.Buildings.Chunk(2), couple => Assert.Contains(couple, b => supply[b.Key] != failed));
        }

        Assert.True(proposal.PacksUsed >= Share(town, new SharingWishes { SpareShare = 0 }).PacksUsed);
        Assert.InRange(proposal.PacksAtLeast, 2, proposal.PacksUsed);
    }

    [Fact]
    public void Neighbours_that_are_both_to_stay_on_one_pack_are_named()
    {
        var town = SharedOver(Couples(6), 4);
        var kept = town with { Buildings = town.Buildings.Select((b, i) => i < 2 ? b with { Pack = "3" } : b).ToItemList() };
        Assert.Equal("House 0 and House 1 are both to stay on pack 3 and go dark together.", Assert.Single(Share(kept, new SharingWishes { SpareShare = 0, NeighboursApart = true }).Notes));
    }

    [Fact]
    public void Packs_that_may_be_bought_are_taken_only_where_those_on_hand_do_not_do()
    {
        var town = SharedOver(Couples(20), 1);
        town = town with { Supplies = [town.Supplies[0] with { Name = "quay", Fuse = "ptc-500ma" }] };
        Assert.NotNull(Share(town, new SharingWishes { SpareShare = 0 }).Why);
        var more = Share(town, new SharingWishes { SpareShare = 0, MorePacks = 9 });
        Assert.Equal(more.PacksUsed, more.Edit!.Supplies.Count);
        Assert.True(more.Proven);
        Assert.Empty(TownChecks.Of(more.Edit.Apply(town)));
        Assert.Equal("1", more.Edit.Supplies[0].Id);
        Assert.All(more.Edit.Supplies, s => Assert.Equal("ptc-500ma", s.Fuse));
    }

    // By hand: three LR6 of 14.5 mm side by side with a holder's edge are 47.5 mm, and 50.5 + 10 = 60.5 mm long: two stand in a row of 100 mm, and 130 mm hold two rows.
    [Theory]
    [InlineData(100, 130, null, null)]
    [InlineData(100, 60, null, "does not hold 4 such packs in rows")]
    [InlineData(100, 130, 15.0, "15 mm high and a holder 19 mm")]
    public void Packs_that_find_no_room_in_the_pocket_are_told(double width, double depth, double? height, string? told)
    {
        var town = SharedOver(Couples(4), 4);
        town = town with
        {
            Board = town.Board! with
            {
                Bank = town.Board.Bank! with { PocketWidth = Length.FromMillimetres(width), PocketDepth = Length.FromMillimetres(depth), PocketHeight = height is { } high ? Length.FromMillimetres(high) : null },
            },
        };
        var notes = Share(town, new SharingWishes()).Notes;
        if (told is null)
        {
            Assert.Empty(notes);
        }
        else
        {
            Assert.Contains(told, Assert.Single(notes), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_glued_house_keeps_its_switch_and_others_join_it_there()
    {
        var town = SharedOver(Couples(4), 2) with { SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }, new SwitchGroup { Id = "Q", Name = "quay", Supply = "2" }] };
        town = town with { Buildings = town.Buildings.Select((b, i) => b with { SwitchGroup = i == 0 ? "Q" : "A", State = i == 0 ? BuildingState.Fixed : BuildingState.Idea }).ToItemList() };
        var shared = Share(town, new SharingWishes { SpareShare = 0 }).Edit!.Apply(town);
        Assert.Equal("Q", shared.Buildings[0].SwitchGroup);
        Assert.Equal(("2", "quay"), shared.SwitchGroups.Where(g => g.Id == "Q").Select(g => (g.Supply, g.Name)).Single());
        Assert.Contains(shared.Buildings.Skip(1), b => b.SwitchGroup == "Q");
        Assert.Empty(TownChecks.Of(shared));
    }

    [Fact]
    public void A_shared_pair_that_is_laid_keeps_its_switch()
    {
        var town = SharedOver(Couples(2), 2) with { SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }, new SwitchGroup { Id = "B", Supply = "2" }] };
        town = town with
        {
            Buildings = town.Buildings.Select(b => b with { SwitchGroup = "B" }).ToItemList(),
            Taps = [new Tap { Id = "TB1", SwitchGroup = "B", Length = Length.FromMillimetres(300), Laid = true }],
            Routes = [new Route { Building = "house-0", From = "TB1", Points = [Point.At(100, 300), Point.At(100, 200)], Length = Length.FromMillimetres(100), Laid = true }],
        };
        Assert.Empty(TownChecks.Of(town));
        var shared = Share(town, new SharingWishes { SpareShare = 0 }).Edit!.Apply(town);
        Assert.Empty(TownChecks.Of(shared));
        Assert.Equal(town.Routes, shared.Routes);
    }

    [Fact]
    public void Better_sharings_are_told_as_they_come_and_the_last_is_the_answer()
    {
        var heard = new List<SharingProposal>();
        var town = SharedOver(Couples(20), 12);
        var last = SharingProposal.Of(town, town.Supplies[0], new SharingWishes { SpareShare = 0 }, new Heard(heard.Add), TestContext.Current.CancellationToken);
        Assert.True(heard.Count >= 2);
        Assert.Equal(heard.Select(h => h.PacksUsed).OrderDescending(), heard.Select(h => h.PacksUsed));
        Assert.Equal(last.Edit, heard[^1].Edit);
        Assert.Equal(last.Edit, Share(town, new SharingWishes { SpareShare = 0 }).Edit);
    }

    [Fact]
    public void A_search_that_is_stopped_at_once_still_shares_every_house()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        var town = SharedOver(Couples(20), 12);
        var proposal = SharingProposal.Of(town, town.Supplies[0], new SharingWishes { SpareShare = 0 }, null, stopped.Token);
        Assert.Equal(town.Buildings.Count, proposal.Edit!.GroupOfBuilding.Count);
        Assert.True(proposal.PacksAtLeast <= proposal.PacksUsed);
    }

    private static SharingProposal Share(Town town, SharingWishes wishes) =>
        SharingProposal.Of(town, new Supply { Id = "1", Part = "LR6", Series = 3 }, wishes, null, TestContext.Current.CancellationToken);

    private static Dictionary<string, string> SupplyOf(Town town) =>
        town.Buildings.ToDictionary(b => b.Key, b => town.SwitchGroups.First(g => g.Id == b.SwitchGroup).Supply!, StringComparer.Ordinal);

    private static Town SharedOver(Town town, int packs) => town with { Supplies = Enumerable.Range(1, packs).Select(i => new Supply { Id = $"{i}", Part = "LR6", Series = 3 }).ToItemList() };

    // A row of couples: two houses 40 mm apart, 200 mm from couple to couple.
    private static Town Couples(int couples) => new()
    {
        Name = "Couples",
        Board = new Board { Width = Length.FromMillimetres(5000), Depth = Length.FromMillimetres(600), Bank = new Bank { At = Point.At(10, 10) } },
        Buildings = Enumerable.Range(0, 2 * couples).Select(i => new Building { Name = $"House {i}", Leds = 8, Place = new Placement { At = Point.At(100 + (200 * (i / 2)) + (40 * (i % 2)), 300) } }).ToItemList(),
    };

    private sealed class Heard(Action<SharingProposal> on) : IProgress<SharingProposal>
    {
        public void Report(SharingProposal value) => on(value);
    }
}
