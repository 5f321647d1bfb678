using Duskwright.Plan.Document;
using Duskwright.Study.Bench;

namespace Duskwright.Study.Tests.Bench;

public class MeanwhileTests
{
    private static readonly DateTime Evening = new(2026, 3, 2, 19, 30, 0);

    private static readonly Town Street = new()
    {
        Name = "Nowhere",
        Buildings = [new Building { Name = "Tavern", Leds = 2, State = BuildingState.Shell }, new Building { Name = "Forge", Leds = 1, State = BuildingState.Shell }],
    };

    [Fact]
    public void While_one_house_dries_the_same_step_is_ready_on_the_other()
    {
        var now = Meanwhile.At(Ticked("cut"), Evening.AddMinutes(5));
        Assert.Equal(("Tavern", Evening.AddHours(2)), (Assert.Single(now.Drying).Name, now.Drying[0].Until));
        Assert.Equal(["Forge"], now.Ready.Single(w => w.Step == "black").Houses.Select(h => h.Name));
    }

    [Fact]
    public void Soldering_goes_on_in_a_house_whose_walls_dry()
    {
        var ready = Meanwhile.At(Ticked("cut", "plan"), Evening.AddMinutes(5)).Ready;
        Assert.Contains("Tavern", ready.Single(w => w.Step == "lamps").Houses.Select(h => h.Name));
    }

    [Fact]
    public void What_is_dry_dries_no_more() => Assert.Empty(Meanwhile.At(Ticked("cut"), Evening.AddHours(3)).Drying);

    [Fact]
    public void In_a_town_of_fixed_houses_nothing_dries_and_nothing_is_ready()
    {
        var now = Meanwhile.At(Street with { Buildings = [new Building { Name = "Tavern", Leds = 2, State = BuildingState.Fixed }] }, Evening);
        Assert.Empty(now.Drying);
        Assert.Empty(now.Ready);
    }

    private static Town Ticked(params string[] steps) => Street with
    {
        Log = [.. steps.Select(s => new LogEntry { Date = DateOnly.FromDateTime(Evening), Time = TimeOnly.FromDateTime(Evening), Kind = LogKind.StepDone, Building = "tavern", Step = s })],
    };
}
