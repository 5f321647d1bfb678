using Duskwright.Calendar.Jobs;
using Duskwright.Calendar.Scheduling;
using static Duskwright.Calendar.Tests.Bench;

namespace Duskwright.Calendar.Tests.Scheduling;

/// <summary>How many houses stand half built.</summary>
public class HalfBuiltTests
{
    // Two houses of two steps with a wait between, in four short evenings.
    private static readonly Gen<BuildWork> TwoHouses =
        from minutes in Gen.Int[1, 2].Array[4]
        from drying in Gen.Int[0, 4].Array[2]
        from session in Gen.Int[2, 3]
        select Work(
            [Step("a1", minutes[0], "a"), Step("b1", minutes[1], "b"), Step("a2", minutes[2], "a"), Step("b2", minutes[3], "b")],
            [new Lag("a1", "a2", drying[0]), new Lag("b1", "b2", drying[1])],
            1,
            [.. Enumerable.Range(0, 4).Select(e => new WorkSession(e * 4, (e * 4) + session))]);

    [Fact]
    public void Two_houses_stand_half_built_as_seldom_as_trying_every_minute_says() => TwoHouses.Sample(work =>
    {
        var schedule = Planned(work);
        var tried = HalfBuiltByEnumeration(work, 16);
        Assert.Equal((tried.Finish, tried.AtOnce), (schedule.Finish, schedule.HousesHalfBuilt));
        Assert.InRange(schedule.HousesHalfBuiltBound, 1, tried.AtOnce);
        Assert.InRange(schedule.HalfBuiltEveningsBound, 0, tried.Evenings);
        Assert.True(tried.Evenings <= schedule.HalfBuiltEvenings);
    }, iter: 8, threads: 1);

    // By hand: each of 80 houses has five steps of 30 min, each dry the evening after, so it stands over four evening ends at least; an
    // evening of 150 min holds one house's work, so 320 fall on the 79 evening ends before the last: four or more at the worst.
    // Twice as many is allowed, and four evenings beyond what the hands need.
    [Fact]
    public void A_long_street_is_built_house_by_house()
    {
        var jobs = Enumerable.Range(0, 80).SelectMany(h => Enumerable.Range(0, 5).Select(s => Step($"{h}.{s}", 30, $"{h}"))).ToArray();
        var lags = Enumerable.Range(0, 80).SelectMany(h => Enumerable.Range(1, 4).Select(s => new Lag($"{h}.{s - 1}", $"{h}.{s}", 1200))).ToArray();
        var schedule = BuildSchedule.Plan(Work(jobs, lags, 1, Evenings(120, 150)), new ScheduleSettings(MostExactJobs: 0, FinishSlack: 4 * 1440), TestContext.Current.CancellationToken);
        Assert.Equal(320, schedule.HalfBuiltEveningsBound);
        Assert.InRange(schedule.HousesHalfBuiltBound, 4, 5);
        Assert.InRange(schedule.HousesHalfBuilt, 4, 10);
        Assert.InRange(schedule.HalfBuiltEvenings, 320, 640);
        Assert.InRange(schedule.Finish, schedule.FinishBound, schedule.FinishBound + (4 * 1440));
    }

    // By hand: 30 + 25 + 5 fill the hour, while the first two by the rule, 40 and 5, leave a quarter of it empty.
    [Fact]
    public void The_rest_of_an_evening_is_filled_to_the_last_minute()
    {
        var jobs = new[] { Step("a", 40, drying: 50), Step("b", 30, drying: 40), Step("c", 25, drying: 30), Step("d", 5), Step("e", 20) };
        var schedule = BuildSchedule.Plan(Work(jobs, [], 1, Evenings(2, 60)), new ScheduleSettings(MostExactJobs: 0), TestContext.Current.CancellationToken);
        var ends = jobs.Select((j, i) => schedule.Starts[i] + j.Minutes).ToList();
        Assert.Contains(1140 + 60, ends);
        Assert.Contains(1140 + 1440 + 60, ends);
    }

    [Fact]
    public void What_was_begun_counts_from_the_first_evening_in_figure_and_bound()
    {
        var work = Work([Step("a2", 20, "a", notBefore: 2 * 1440)], [], 1, Evenings(4, 60)) with { BegunHouses = ["a"] };
        Assert.Equal((1, 1, 2, 2), (Planned(work).HousesHalfBuilt, Planned(work).HousesHalfBuiltBound, Planned(work).HalfBuiltEvenings, Planned(work).HalfBuiltEveningsBound));
    }
}
