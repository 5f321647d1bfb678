using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Plan.Lists;
using Duskwright.Plan.Quantities;
using Duskwright.Study;
using Duskwright.Study.Findings;

namespace Duskwright.Proposals.Tests;

public class ProposalTests
{
    private static Town Example(string name) => TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", name))).Town!;

    private static Town TenLines() => BuildingList.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", "ten-lines.csv"))).Town!;

    [Fact]
    public void Every_house_of_the_harbour_finds_a_way_to_the_bank_no_shorter_than_straight()
    {
        var town = Example("saltmarrow.json");
        var proposal = RouteProposal.Of(town);
        Assert.Empty(proposal.NoRoute);
        Assert.Equal(town.Buildings.Count, proposal.Edit.Routes.Count);
        var bank = town.Board!.Bank!.At;
        Assert.All(proposal.Edit.Routes, route =>
        {
            var at = town.Buildings.Single(b => b.Key == route.Building).Place!.At;
            var straight = Math.Sqrt(Math.Pow(at.X.Millimetres - bank.X.Millimetres, 2) + Math.Pow(at.Y.Millimetres - bank.Y.Millimetres, 2));
            Assert.True(route.Length.Millimetres >= straight, route.Building);
        });
    }

    [Fact]
    public void A_laid_pair_is_a_given_that_no_proposal_moves()
    {
        var town = Example("saltmarrow.json");
        var laid = RouteProposal.Of(town).Edit.Routes[0] with { Laid = true };
        var with = town with { Routes = [laid] };
        Assert.DoesNotContain(RouteProposal.Of(with).Edit.Routes, r => r.Building == laid.Building);
        Assert.Contains(laid, RouteProposal.Of(with).Edit.Apply(with).Routes);
    }

    [Fact]
    public void A_wireway_that_all_must_use_and_none_may_is_named_with_its_remedy()
    {
        var town = Example("saltmarrow.json");
        var narrow = town with { Board = town.Board! with { Wireways = town.Board.Wireways.Select(w => w with { CapacityPairs = 1 }).ToItemList() } };
        Assert.NotEmpty(RouteProposal.Of(narrow).Crowded);
        Assert.All(RouteProposal.Of(narrow).Crowded, said => Assert.Contains("make it wider, or draw another beside it", said, StringComparison.Ordinal));
    }

    [Fact]
    public void Ten_typed_lines_become_a_town_that_lasts_its_show()
    {
        var study = TownStudy.Of(StartingPlan.Of(TenLines()));
        Assert.Equal(30, study.Lamps.Count);
        Assert.All(study.Packs, p => Assert.True(p.HoursToDim is null || p.HoursToDim.Value > study.Town.Show.HoursPerDay.Hours));
        Assert.All(study.Packs, p => Assert.True(p.ShortCircuit!.FuseOpens));
        Assert.All(study.Buildings, b => Assert.NotNull(b.Supply));
    }

    [Fact]
    public void A_first_plan_repeats_exactly() => Assert.Equal(StartingPlan.Of(TenLines()), StartingPlan.Of(TenLines()));

    [Fact]
    public void A_house_glued_down_keeps_its_pack()
    {
        var town = Example("saltmarrow.json");
        var proposal = SharingProposal.Of(town, StartingPlan.UsualPack(town), cancel: TestContext.Current.CancellationToken);
        var shared = proposal.Edit!.Apply(town);
        string? SupplyOf(Town t, Building b) => t.SwitchGroups.First(g => g.Id == b.SwitchGroup).Supply;
        Assert.All(
            town.Buildings.Where(b => b.State == BuildingState.Fixed),
            b => Assert.Equal(SupplyOf(town, b), SupplyOf(shared, shared.Buildings.Single(s => s.Key == b.Key))));
    }

    [Fact]
    public void A_house_that_asks_more_than_any_pack_gives_hangs_on_one_alone_and_is_told()
    {
        var town = new Town
        {
            Name = "Old Brackwater",
            Buildings =
            [
                new Building { Name = "Chapel", Leds = 4, Resistor = ResistorChoice.None, State = BuildingState.Fixed },
                new Building { Name = "Dairy", Leds = 3, Resistor = ResistorChoice.Of(Resistance.FromOhms(470)) },
            ],
        };
        Assert.Contains("Chapel takes", Assert.Single(SharingProposal.Of(town, StartingPlan.UsualPack(town), cancel: TestContext.Current.CancellationToken).Notes), StringComparison.Ordinal);
        var study = TownStudy.Of(StartingPlan.Of(town));
        Assert.All(study.Lamps, l => Assert.NotNull(l.Supply));
        Assert.Contains(study.Packs, p => p.Buildings.Count == 1 && p.Supply.Id == study.Lamps.First(l => l.Building == "chapel").Supply);
        Assert.Contains(study.Findings, f => f.Severity == Severity.Spoils);
    }
}
