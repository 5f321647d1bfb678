using Duskwright.Calendar.Jobs;
using Duskwright.Calendar.Scheduling;
using static Duskwright.Calendar.Tests.Bench;

namespace Duskwright.Calendar.Tests.Scheduling;

public class BuildScheduleTests
{
    // By hand: 20 min of paint, 60 of drying, 10 of glazing = 90; the 30 min of soldering go into the drying.
    [Fact]
    public void While_the_paint_dries_the_lamps_are_soldered()
    {
        var schedule = Planned(Work([Step("paint", 20), Step("glaze", 10), Step("solder", 30)], [new Lag("paint", "glaze", 60)]));
        Assert.Equal((ScheduleStatus.Earliest, 90, 90), (schedule.Status, schedule.Finish, schedule.FinishBound));
        Assert.InRange(schedule.Starts[2], 20, 50);
    }

    // Source: J Carlier, "The one-machine sequencing problem", European Journal of Operational Research 11 (1982) 42-47, the
    // seven-job example (r, p, q) with optimum 50; recalled from memory, optimality proved elsewhere by a constraint solver.
    [Fact]
    public void The_seven_jobs_of_Carlier_1982_take_50()
    {
        var jobs = new (int R, int P, int Q)[] { (10, 5, 7), (13, 6, 26), (11, 7, 24), (20, 4, 21), (30, 3, 8), (0, 6, 17), (30, 2, 0) };
        var schedule = Planned(Work([.. jobs.Select((j, i) => Step($"{i}", j.P, drying: j.Q, notBefore: j.R))], []));
        Assert.Equal((ScheduleStatus.Earliest, 50), (schedule.Status, schedule.Finish));
    }

    // By hand: two evenings of 60 min; 40 + 40 min do not fit into one, so the second step begins at seven the next day.
    [Fact]
    public void A_step_that_does_not_fit_into_the_rest_of_the_evening_waits_for_the_next()
    {
        var schedule = Planned(Work([Step("a", 40), Step("b", 40)], [], 1, Evenings(2, 60)));
        Assert.Equal([1140, 1140 + 1440], schedule.Starts.Order());
        Assert.Equal(1440 + 1180, schedule.Finish);
    }

    // By hand: 24 h of drying from 19:30 end at 19:30 the next day, inside that evening.
    [Fact]
    public void Drying_runs_through_the_night()
    {
        var schedule = Planned(Work([Step("glue", 30), Step("roof", 30)], [new Lag("glue", "roof", 1440)], 1, Evenings(3, 120)));
        Assert.Equal((1140, 1140 + 30 + 1440), (schedule.Starts[0], schedule.Starts[1]));
    }

    [Fact]
    public void Two_pairs_of_hands_halve_what_does_not_hang_together() =>
        Assert.Equal((60, 30), (
            Planned(Work([Step("a", 30), Step("b", 30)], [])).Finish,
            Planned(Work([Step("a", 30), Step("b", 30)], [], hands: 2)).Finish));

    // By hand: one place on the shelf is taken 10 + 50 min by each roof, so the second is painted at 60.
    [Fact]
    public void A_place_on_the_drying_shelf_is_taken_until_the_roof_is_dry()
    {
        Job Roof(string id) => new(id, 10) { Uses = [new Use("hands"), new Use("shelf", 1, HeldAfterMinutes: 50)] };
        var schedule = Planned(new BuildWork([Roof("a"), Roof("b")], [], [new Resource("hands", 1), new Resource("shelf", 1)]));
        Assert.Equal([0, 60], schedule.Starts.Order());
        Assert.Equal(ScheduleStatus.Earliest, schedule.Status);
    }

    // By hand: 10 + 15 and 40 min do not fit into one evening of 60; the shorter two go last and stay together.
    [Fact]
    public void What_must_follow_while_the_glue_is_wet_follows_at_once()
    {
        var schedule = Planned(Work([Step("wet", 10), Step("paper", 15), Step("long", 40)], [new Lag("wet", "paper", 0, AtMost: 5)], 1, Evenings(2, 60)));
        Assert.InRange(schedule.Starts[1] - (schedule.Starts[0] + 10), 0, 5);
        Assert.Equal((ScheduleStatus.Earliest, 1440 + 1140 + 25), (schedule.Status, schedule.Finish));
    }

    // By hand: both houses end at 80 either way; one after the other only one stands half built.
    [Fact]
    public void Of_equal_finishes_the_one_with_fewer_half_built_houses_is_taken()
    {
        var jobs = new[] { Step("a1", 20, "a"), Step("b1", 20, "b"), Step("a2", 20, "a"), Step("b2", 20, "b") };
        var schedule = Planned(Work(jobs, [new Lag("a1", "a2"), new Lag("b1", "b2")]));
        Assert.Equal((80, 1, 1), (schedule.Finish, schedule.HousesHalfBuilt, schedule.HousesHalfBuiltBound));
    }

    // By hand: with 20 min of drying in each house the finish of 80 needs both open at once.
    [Fact]
    public void The_finish_goes_before_the_half_built_houses()
    {
        var jobs = new[] { Step("a1", 20, "a"), Step("b1", 20, "b"), Step("a2", 20, "a"), Step("b2", 20, "b") };
        var schedule = Planned(Work(jobs, [new Lag("a1", "a2", 20), new Lag("b1", "b2", 20)]));
        Assert.Equal((80, 2, 2), (schedule.Finish, schedule.HousesHalfBuilt, schedule.HousesHalfBuiltBound));
    }

    [Fact]
    public void A_house_that_was_begun_before_counts_as_half_built_from_the_start()
    {
        var work = Work([Step("a2", 20, "a", notBefore: 100), Step("b1", 20, "b")], []) with { BegunHouses = ["a"] };
        Assert.Equal((120, 2), (Planned(work).Finish, Planned(work).HousesHalfBuilt));
    }

    [Fact]
    public void The_same_work_has_the_same_schedule()
    {
        var work = RandomWork.Sound.Single();
        Assert.Equal(Planned(work).Starts, Planned(work).Starts);
    }

    [Fact]
    public void Nothing_to_do_is_done_at_once() =>
        Assert.Equal((ScheduleStatus.Earliest, 0), (Planned(Work([], [])).Status, Planned(Work([], [])).Finish));

    [Fact]
    public void A_search_that_was_stopped_still_gives_a_bound()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        var schedule = BuildSchedule.Plan(Work([Step("a", 30), Step("b", 30)], []), stopped.Token);
        Assert.Equal(60, schedule.FinishBound);
    }

    [Fact]
    public void Two_jobs_of_one_name_are_a_mistake_of_the_caller() =>
        Assert.StartsWith("There are two of the job \"a\"", Assert.Throws<ArgumentException>(() => Planned(Work([Step("a", 1), Step("a", 1)], []))).Message, StringComparison.Ordinal);

    [Fact]
    public void Sessions_that_overlap_are_a_mistake_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => Planned(Work([], [], 1, new WorkSession(0, 60), new WorkSession(59, 90))));
}
