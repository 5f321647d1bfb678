using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Bench;

namespace Duskwright.Study.Tests.Bench;

public class HouseWorkTests
{
    private static readonly DateTime Monday = new(2026, 3, 2, 19, 0, 0);
    private static readonly Town Begun = new()
    {
        Name = "Nowhere",
        Wiring = new WiringChoices { Led = "ready-5v-warm-white" },
        Buildings = [new Building { Name = "House", Leds = 2, Storeys = [new Storey { Rooms = [new Room { Windows = [new Window { Width = Length.FromMillimetres(8), Height = Length.FromMillimetres(12) }] }] }] }],
    };

    [Fact]
    public void What_is_ticked_is_done_and_the_step_behind_it_comes_next()
    {
        Assert.Equal("plan", Work(Begun).Next!.Step.Key);
        Assert.Equal("cut", Work(Ticked(Begun, Monday, "plan")).Next!.Step.Key);
    }

    // Common practice, no source: a second coat, or careful work on it, two hours after black acrylic.
    [Fact]
    public void A_step_on_wet_paint_waits_for_it_in_clock_time()
    {
        var black = Work(Ticked(Begun, Monday, "plan", "cut", "black")).Steps.Single(s => s.Step.Key == "torch");
        Assert.Empty(black.WaitsFor);
        Assert.Equal(Monday.AddHours(2), black.ReadyAt);
    }

    [Fact]
    public void While_one_thing_dries_another_is_taken_up()
    {
        var work = Work(Ticked(Begun, Monday, "plan", "cut", "black"));
        Assert.Equal("lamps", work.NextAt(Monday.AddMinutes(5))!.Step.Key);
        Assert.Equal("torch", work.NextAt(Monday.AddHours(3))!.Step.Key);
    }

    [Fact]
    public void The_roof_is_a_seal_that_waits_for_both_tests_with_the_roof_off_and_for_the_one_in_the_dark()
    {
        var close = Work(Begun).Steps.Single(s => s.Step.Key == "close");
        Assert.True(close.Step.Seals);
        Assert.Equal(["lamps-in-roof-off", "turned-round", "roof-on-in-the-dark"], close.Untested);
    }

    [Fact]
    public void A_test_opens_the_seal_only_while_its_last_result_is_a_pass()
    {
        Assert.Equal(["turned-round", "roof-on-in-the-dark"], Work(Tested(Begun, "lamps-in-roof-off", true)).TestsInTheWay("close"));
        Assert.Equal(["lamps-in-roof-off", "turned-round", "roof-on-in-the-dark"], Work(Tested(Tested(Begun, "lamps-in-roof-off", true), "lamps-in-roof-off", false)).TestsInTheWay("close"));
    }

    [Fact]
    public void Every_building_of_the_harbour_is_ticked_step_by_step_to_its_end()
    {
        Assert.All(Demo.Saltmarrow.Buildings, building =>
        {
            var town = new Town { Name = "Nowhere", Wiring = Demo.Saltmarrow.Wiring, Buildings = [building with { State = BuildingState.Idea, SwitchGroup = null, FeedHole = null }] };
            var count = BuildSteps.All(town, building).Count;
            for (var i = 0; i < count; i++)
            {
                var next = HouseWork.Of(town, town.Buildings[0], []).Next;
                Assert.NotNull(next);
                town = new EnterInLog(new LogEntry { Date = DateOnly.FromDateTime(Monday), Kind = LogKind.StepDone, Building = building.Key, Step = next.Step.Key }).Apply(town);
            }

            Assert.Null(HouseWork.Of(town, town.Buildings[0], []).Next);
        });
    }

    [Fact]
    public void A_street_lamp_without_a_roof_is_tested_before_it_is_glued_in()
    {
        var lamp = new Building { Name = "Lamp", Kind = BuildingKind.StreetLamp };
        Assert.Equal(["lamps-in-roof-off", "turned-round", "fed-at-the-bank"], BuildSteps.All(Begun, lamp).Single(s => s.Key == "glue-in").Tests);
    }

    // Common practice, no source: a pair is tried from its far end before it is joined, for a pull through the board hurts joints.
    [Fact]
    public void A_pair_pulled_through_the_board_is_tried_before_it_is_joined() =>
        Assert.Equal(["fed-through-the-board"], Work(Begun).TestsInTheWay("join"));

    [Fact]
    public void A_tick_takes_the_house_along_and_a_withdrawn_one_gives_it_back()
    {
        var cut = Ticked(Begun, Monday, "cut");
        Assert.Equal(BuildingState.Shell, cut.Buildings[0].State);
        var withdrawn = new EnterInLog(new LogEntry { Date = new DateOnly(2026, 3, 3), Kind = LogKind.Withdrawn, Corrects = "cut" }).Apply(cut);
        Assert.Equal(BuildingState.Idea, withdrawn.Buildings[0].State);
        Assert.False(Work(withdrawn).Steps.Single(s => s.Step.Key == "cut").IsDone);
    }

    [Fact]
    public void A_house_just_glued_in_is_fixed_and_has_its_last_test_before_it()
    {
        var glued = Ticked(Ticked(Begun, Monday, "cut", "fit"), Monday.AddDays(3), "glue-in");
        Assert.Equal(BuildingState.Fixed, glued.Buildings[0].State);
        var left = Assert.Single(BuildSteps.Of(glued, glued.Buildings[0]));
        Assert.Equal("last-test", left.Key);
        Assert.Equal(Monday.AddDays(4), Work(glued).Next!.ReadyAt);
    }

    [Fact]
    public void Every_test_of_the_harbour_is_one_that_a_step_waits_for()
    {
        var study = TownStudy.Of(Demo.Saltmarrow);
        Assert.All(study.Buildings, house =>
        {
            var waited = BuildSteps.All(study.Town, house.Building).SelectMany(s => s.Tests).ToHashSet(StringComparer.Ordinal);
            Assert.All(house.Tests, test => Assert.Contains(test.Key, waited));
        });
    }

    private static HouseWork Work(Town town) => TownStudy.Of(town).Work("house")!;

    private static Town Ticked(Town town, DateTime at, params string[] steps) => steps.Aggregate(town, (t, step) => new EnterInLog(new LogEntry
    {
        Id = step,
        Date = DateOnly.FromDateTime(at),
        Time = TimeOnly.FromDateTime(at),
        Kind = LogKind.StepDone,
        Building = "house",
        Step = step,
    }).Apply(t));

    private static Town Tested(Town town, string test, bool passed) =>
        new EnterInLog(new LogEntry { Date = DateOnly.FromDateTime(Monday), Kind = LogKind.Test, Building = "house", Test = test, Passed = passed }).Apply(town);
}
