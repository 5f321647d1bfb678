using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests.Document;

public class SharedRunsTests
{
    [Fact]
    public void A_pair_that_begins_at_nothing_is_a_problem() =>
        Assert.Equal("routes[1].from", Assert.Single(TownChecks.Of(Town("nowhere"))).Path);

    [Fact]
    public void A_pair_that_begins_at_another_switch_is_a_problem() =>
        Assert.Equal("another-switch", Assert.Single(TownChecks.Of(Town("TB1"))).Rule);

    [Fact]
    public void Pairs_that_lead_to_each_other_never_reach_the_bank()
    {
        var town = Town("ash");
        Assert.Empty(TownChecks.Of(town));
        var round = town with { Routes = [town.Routes[0] with { From = "birch" }, town.Routes[1]] };
        Assert.All(TownChecks.Of(round), p => Assert.Equal("round", p.Rule));
        Assert.Equal(2, TownChecks.Of(round).Count);
    }

    [Fact]
    public void What_a_laid_pair_hangs_on_is_held()
    {
        var town = Town("ash");
        town = town with { Routes = [town.Routes[0], town.Routes[1] with { Laid = true }] };
        Assert.Equal(["ash", "birch"], SharedRuns.Held(town).Order());
        Assert.False(MoveBuilding.May(town, "ash"));
    }

    [Fact]
    public void A_house_taken_out_of_a_chain_takes_what_goes_on_from_it_away_and_taps_that_feed_nothing()
    {
        var town = Town("ash");
        var without = new RemoveBuildings([town.Buildings[0]]).Apply(town);
        Assert.Empty(without.Routes);
        Assert.Empty(without.Taps);
        Assert.Empty(TownChecks.Of(without));
    }

    private static Town Town(string birchFrom) => new()
    {
        Name = "Row",
        Buildings = [new Building { Name = "Ash", Leds = 1, SwitchGroup = "A" }, new Building { Name = "Birch", Leds = 1, SwitchGroup = "A" }],
        SwitchGroups = [new SwitchGroup { Id = "A" }, new SwitchGroup { Id = "B" }],
        Routes = [Route("ash", null), Route("birch", birchFrom)],
        Taps = [new Tap { Id = "TB1", SwitchGroup = "B", Length = Length.FromMillimetres(100) }],
    };

    private static Route Route(string building, string? from) => new() { Building = building, From = from, Points = [], Length = Length.FromMillimetres(200) };
}
