using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Bench;

namespace Duskwright.Study.Tests.Bench;

/// <summary>What a maker does otherwise. Drying and what waits for what: common practice, no source.</summary>
public class OwnWayTests
{
    private static readonly Town Nowhere = new() { Name = "Nowhere" };
    private static readonly OwnStep Thatch = new() { Key = "own-thatch", Words = "lay the thatch", Minutes = 40, DryMinutes = 720, After = "cover", Before = "glue-in" };

    [Fact]
    public void A_step_of_the_makers_own_waits_for_the_one_before_it_and_is_waited_for()
    {
        var steps = Steps(new BuildWay { Added = [Thatch] });
        Assert.Equal("cover", Assert.Single(steps.Single(s => s.Key == "own-thatch").After).Step);
        Assert.Contains(new StepWait("own-thatch", 720), steps.Single(s => s.Key == "glue-in").After);
        Assert.Equal(steps.Select(s => s.Key).ToList().IndexOf("cover") + 1, steps.Select(s => s.Key).ToList().IndexOf("own-thatch"));
    }

    [Fact]
    public void Paint_that_dries_twice_as_long_keeps_the_panes_waiting_twice_as_long()
    {
        int Wait(BuildWay? way) => Steps(way).Single(s => s.Key == "glaze").After.Single(w => w.Step == "paint").DryMinutes;
        Assert.Equal(2 * Wait(null), Wait(new BuildWay { Changed = [new ChangedStep { Step = "paint", DryMinutes = 2 * 24 * 60 }] }));
    }

    [Fact]
    public void What_waited_for_a_step_left_out_waits_for_what_that_step_waited_for()
    {
        var steps = Steps(new BuildWay { Changed = [new ChangedStep { Step = "torch", LeftOut = true }] });
        Assert.DoesNotContain(steps, s => s.Key == "torch");
        Assert.Contains(steps.Single(s => s.Key == "paint").After, w => w == new StepWait("black", 120));
    }

    [Theory]
    [InlineData("close")]
    [InlineData("tag")]
    public void What_seals_or_is_tested_is_not_left_out(string step) =>
        Assert.Contains(Steps(new BuildWay { Changed = [new ChangedStep { Step = step, LeftOut = true }] }), s => s.Key == step);

    [Fact]
    public void Whatever_order_is_wanted_no_step_comes_before_one_that_it_waits_for()
    {
        var backwards = Steps(null).Select(s => s.Key).Reverse().ToItemList();
        var done = new HashSet<string>();
        Assert.All(Steps(new BuildWay { Added = [Thatch], Order = backwards }), s =>
        {
            Assert.All(s.After, w => Assert.Contains(w.Step, done));
            done.Add(s.Key);
        });
    }

    [Fact]
    public void A_step_is_done_earlier_where_nothing_stands_in_the_way()
    {
        var order = Steps(null).Select(s => s.Key).Where(k => k != "drill").Prepend("drill").ToItemList();
        var steps = Steps(new BuildWay { Order = order }).Select(s => s.Key).ToList();
        Assert.Equal(["plan", "drill"], steps.Take(2).Order().Reverse());
    }

    [Fact]
    public void A_circle_of_waiting_is_cut_where_the_maker_closed_it() =>
        Assert.DoesNotContain(Steps(new BuildWay { Added = [Thatch with { Before = "cut" }] }).Single(s => s.Key == "cut").After, w => w.Step == "own-thatch");

    [Fact]
    public void A_seal_of_the_makers_own_waits_for_the_tests_that_can_be_made_by_then()
    {
        var step = Steps(new BuildWay { Added = [Thatch with { After = "fit", Before = "close", Seals = true }] }).Single(s => s.IsOwn);
        Assert.Equal(["lamps-in-roof-off", "turned-round"], step.Tests);
    }

    [Fact]
    public void A_test_of_the_makers_own_holds_the_next_seal_only_where_it_must_be_passed()
    {
        ItemList<BenchStep> With(bool must) => Steps(new BuildWay { Added = [Thatch with { After = "fit", Before = "close", Test = new OwnTest { Words = "pair to the test pack", BeforeSeal = must } }] });
        Assert.Equal(["own-thatch", "close"], With(true).Where(s => s.WaitsForTest("own-thatch-test")).Select(s => s.Key));
        Assert.DoesNotContain(With(false), s => s.WaitsForTest("own-thatch-test"));
        Assert.Equal("own-thatch-test", With(false).Single(s => s.IsOwn).OwnTest);
    }

    [Fact]
    public void A_house_that_is_fixed_has_no_step_left_in_its_own_way_either() =>
        Assert.Empty(BuildSteps.Of(Nowhere, House(new BuildWay { Added = [Thatch] }) with { State = BuildingState.Fixed }));

    private static Building House(BuildWay? way) => new() { Name = "Tavern", Leds = 2, Way = way, Storeys = [new Storey { Rooms = [new Room { Lamps = [new Lamp(), new Lamp()], Windows = [new Window { Width = Plan.Quantities.Length.FromMillimetres(8), Height = Plan.Quantities.Length.FromMillimetres(12) }] }] }] };

    private static ItemList<BenchStep> Steps(BuildWay? way) => BuildSteps.All(Nowhere, House(way));
}
