using Duskwright.Plan.Document;
using Duskwright.Study.Bench;

namespace Duskwright.Study.Tests.Bench;

/// <summary>What fills the wait while something dries.</summary>
public class DryingWorkTests
{
    private static readonly DateTime Evening = new(2026, 12, 1, 19, 0, 0);

    private static CalendarStep Step(string building, string step, double hours, int minutes) => new() { Building = building, Step = step, Start = Evening.AddHours(hours), Minutes = minutes };

    // Common practice, no source: white glue on card holds for careful work after two hours; so the lamps of the mill, an hour later, fall
    // into the drying of the cottage's walls, and the blackening of the cottage, the next evening, does not.
    private static readonly Town Planned = new()
    {
        Name = "T",
        Buildings = [new Building { Name = "Cottage", Leds = 2 }, new Building { Name = "Mill", Leds = 3 }],
        Calendar = new BenchCalendar
        {
            Sessions = [],
            Hands = 1,
            Steps = [Step("cottage", "cut", 0, 45), Step("mill", "plan", 0.75, 8), Step("mill", "lamps", 1, 30), Step("cottage", "black", 24, 15)],
            Finish = Evening.AddDays(9),
            FinishAtEarliest = Evening.AddDays(9),
        },
    };

    [Fact]
    public void While_the_walls_of_one_house_dry_the_lamps_of_another_are_made()
    {
        var drying = Assert.Single(DryingWork.On(Planned, DateOnly.FromDateTime(Evening)));
        Assert.Equal(("Cottage", Evening.AddMinutes(45 + 120)), (drying.Name, drying.DryAt));
        Assert.Equal([("Mill", Evening.AddMinutes(45)), ("Mill", Evening.AddHours(1))], drying.Meanwhile.Select(m => (m.Name, m.Start)));
    }

    [Fact]
    public void On_a_day_on_which_nothing_is_set_to_dry_there_is_no_wait_to_fill() =>
        Assert.Empty(DryingWork.On(Planned, DateOnly.FromDateTime(Evening).AddDays(3)));

    [Fact]
    public void What_is_ticked_is_neither_waited_for_nor_offered()
    {
        var ticked = Planned with { Log = [new LogEntry { Date = DateOnly.FromDateTime(Evening), Kind = LogKind.StepDone, Building = "mill", Step = "plan" }] };
        Assert.Equal([Evening.AddHours(1)], DryingWork.On(ticked, DateOnly.FromDateTime(Evening)).Single().Meanwhile.Select(m => m.Start));
    }
}
