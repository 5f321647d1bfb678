using Duskwright.Calendar.Scheduling;
using static Duskwright.Calendar.Tests.Bench;

namespace Duskwright.Calendar.Tests.Scheduling;

/// <summary>What holds for every schedule.</summary>
public class LawTests
{
    private static readonly ScheduleSettings Quick = new(DeterministicLimit: 0.2);

    [Fact]
    public void Waits_hands_shelf_and_sessions_are_kept_and_no_finish_is_before_its_bound() => RandomWork.Any.Sample(work =>
    {
        var schedule = BuildSchedule.Plan(work, Quick, TestContext.Current.CancellationToken);
        if (schedule.Why is not null)
        {
            Assert.Empty(schedule.Starts);
            return;
        }

        Assert.Empty(Broken(work, schedule.Starts));
        Assert.True(schedule.FinishBound <= schedule.Finish);
        Assert.Equal(schedule.FinishBound == schedule.Finish, schedule.Status == ScheduleStatus.Earliest);
        Assert.True(schedule.HousesHalfBuiltBound <= schedule.HousesHalfBuilt);
        Assert.True(schedule.HalfBuiltEveningsBound <= schedule.HalfBuiltEvenings);
    }, iter: 150, threads: 1);

    [Fact]
    public void Work_without_latest_times_always_has_a_schedule_and_by_rules_alone_too() => RandomWork.Sound.Sample(work =>
    {
        var rules = BuildSchedule.Plan(work, Quick with { MostExactJobs = 0 }, TestContext.Current.CancellationToken);
        var exact = BuildSchedule.Plan(work, Quick, TestContext.Current.CancellationToken);
        Assert.Empty(Broken(work, rules.Starts));
        Assert.True(exact.Finish <= rules.Finish && rules.FinishBound <= exact.Finish);
    }, iter: 60, threads: 1);

    [Fact]
    public void Three_short_jobs_end_when_trying_every_minute_says_so() => RandomWork.Tiny.Sample(work =>
    {
        // A clash of latest times can take the solver some while to prove, however few the jobs.
        var schedule = BuildSchedule.Plan(work, Quick with { DeterministicLimit = 5 }, TestContext.Current.CancellationToken);
        var tried = ByEnumeration(work, 22);
        Assert.Equal(tried, schedule.Why is null ? schedule.Finish : null);
        Assert.Equal(tried is null ? ScheduleStatus.Impossible : ScheduleStatus.Earliest, schedule.Status);
    }, iter: 40, threads: 1);

    [Fact]
    public void A_broken_schedule_is_seen_to_be_broken()
    {
        var work = Work([Step("a", 10), Step("b", 10)], [new("a", "b", 5)], 1, Evenings(1, 60));
        Assert.Equal(["b waits -10 min for a", "a outside the sessions", "b outside the sessions", "too much of hands at 0", "too much of hands at 0"], Broken(work, [0, 0]));
        Assert.Empty(Broken(work, [1140, 1155]));
    }
}
