using Duskwright.Calendar.Jobs;
using Duskwright.Calendar.Scheduling;
using static Duskwright.Calendar.Tests.Bench;

namespace Duskwright.Calendar.Tests.Scheduling;

public class ImpossibleTests
{
    [Fact]
    public void Waits_that_go_round_in_a_circle_are_named()
    {
        var why = Why(Work([Step("roof", 10), Step("test", 5), Step("glue", 5)], [new Lag("roof", "test"), new Lag("test", "glue"), new Lag("glue", "roof", 60)]));
        Assert.StartsWith("These waits go round in a circle: ", why, StringComparison.Ordinal);
        Assert.All(["test at least 0 min after roof", "glue at least 0 min after test", "roof at least 60 min after glue"], wait => Assert.Contains(wait, why, StringComparison.Ordinal));
    }

    [Fact]
    public void A_latest_that_is_earlier_than_the_drying_is_named_with_it()
    {
        var why = Why(Work([Step("coat", 10), Step("rub", 5), Step("cover", 5)], [new Lag("coat", "rub", 120), new Lag("rub", "cover"), new Lag("coat", "cover", null, AtMost: 90)]));
        Assert.Contains("rub at least 120 min after coat", why, StringComparison.Ordinal);
        Assert.Contains("cover at most 90 min after coat", why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_window_that_falls_into_the_night_is_named()
    {
        var why = Why(Work([Step("glue", 10), Step("press", 5)], [new Lag("glue", "press", 300, AtMost: 360)], 1, Evenings(5, 120)));
        Assert.StartsWith("No session lets these be kept together: ", why, StringComparison.Ordinal);
        Assert.Contains("press at most 360 min after glue", why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_longer_than_every_session_is_named_with_both_times() =>
        Assert.Equal("cut takes 90 min in one go and the longest session has 60 min: split it, or add a longer session.", Why(Work([Step("cut", 90)], [], 1, Evenings(3, 60))));

    [Fact]
    public void Too_few_sessions_are_said_with_the_sums() =>
        Assert.Equal("The work takes 3 h of hands and does not fit into the sessions of 2 h in all: add sessions.", Why(Work([Step("a", 60), Step("b", 60), Step("c", 60)], [], 1, Evenings(2, 60))));

    [Fact]
    public void More_hands_than_there_are_is_said() =>
        Assert.Equal("lift takes 2 of hands and there are 1: do it in parts, or find more.", Why(new BuildWork([new Job("lift", 5) { Uses = [new Use("hands", 2)] }], [], [new Resource("hands", 1)])));

    // By hand: a and b must both be begun within 10 min of the mark, and each takes 30 min of the one pair of hands.
    [Fact]
    public void Windows_that_one_pair_of_hands_cannot_keep_are_named_and_no_others()
    {
        var why = Why(Work(
            [Step("mix", 0), Step("a", 30), Step("b", 30), Step("c", 30)],
            [new Lag("mix", "a", 0, 10), new Lag("mix", "b", 0, 10), new Lag("mix", "c", 0, 900)]));
        Assert.Equal("There are not enough hands or places to keep these together: a at most 10 min after mix; b at most 10 min after mix. Loosen one of them, or do it with more hands.", why);
    }

    private static string Why(BuildWork work)
    {
        var schedule = Planned(work);
        Assert.Equal(ScheduleStatus.Impossible, schedule.Status);
        Assert.Empty(schedule.Starts);
        return schedule.Why!;
    }
}
