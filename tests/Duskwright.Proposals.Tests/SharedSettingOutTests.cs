using System.Collections.Immutable;
using Duskwright.Calendar.Jobs;
using Duskwright.Calendar.Scheduling;

namespace Duskwright.Proposals.Tests;

/// <summary>Paint is mixed once for all that is painted on an evening; small work is compared with every order there is.</summary>
public class SharedSettingOutTests
{
    private const int Day = 1440;

    // By hand: of two roofs of 30 min in an hour the second needs no mixing and is done 5 min sooner, at minute 55; the coats of the next hour end at 35 instead of 40.
    [Fact]
    public void Two_roofs_of_one_evening_are_done_five_minutes_sooner_and_so_are_two_coats_of_the_next()
    {
        var evenings = new Case([("cover", 30), ("cover", 30), ("paint", 20), ("paint", 20)], 60, 2);
        var (starts, minutes) = SharedSettingOut.Of(evenings.Work, evenings.Kinds, [0, 30, Day, Day + 20]);
        Assert.Equal([0, 30, Day, Day + 20], starts);
        Assert.Equal([30, 25, 20, 15], minutes);
    }

    // By hand: with a coat of paint between them the second roof is still set out already: it takes 25 min, the second coat 15, and what comes behind moves forward by 5 and by 10.
    [Fact]
    public void What_comes_behind_shared_work_is_taken_up_sooner_but_never_before_it_is_dry()
    {
        var evening = new Case([("cover", 30), ("paint", 20), ("cover", 30), ("paint", 20), ("lamps", 10)], 120, 1);
        Assert.Equal([0, 30, 50, 75, 90], SharedSettingOut.Of(evening.Work, evening.Kinds, [0, 30, 50, 80, 100]).Starts);
        var drying = evening.Work with { Lags = [new Lag("2", "4", 20)] };
        Assert.Equal(50 + 25 + 20, SharedSettingOut.Of(drying, evening.Kinds, [0, 30, 50, 80, 100]).Starts[4]);
    }

    // Every order of five jobs in three sessions is tried, each session ended after any of them.
    [Fact]
    public void No_order_of_all_saves_more_than_the_bound_and_the_calendar_no_more_than_the_best_order() =>
        Gen.Select(Gen.OneOf(Gen.Const("paint"), Gen.Const("cover")), Gen.Int[6, 30], (kind, minutes) => (kind, minutes)).Array[3, 5].Sample(
            jobs =>
            {
                var small = new Case(jobs, 60, 3);
                var schedule = BuildSchedule.Plan(small.Work);
                var (starts, minutes) = SharedSettingOut.Of(small.Work, small.Kinds, schedule.Starts);
                var (saved, best) = (jobs.Sum(j => j.minutes) - minutes.Sum(), small.MostSaved());
                Assert.True(saved <= best, $"{saved} min are saved and no order saves more than {best}.");
                Assert.True(best <= SharedSettingOut.MostSaved(small.Work, small.Kinds, 1), $"{best} min can be saved.");
                small.Holds(starts, minutes, schedule.Starts);
            },
            iter: 60);

    private sealed record Case((string Kind, int Minutes)[] Jobs, int Session, int Sessions)
    {
        private const int SettingOut = 5;

        internal (string? Kind, int Minutes)[] Kinds => [.. Jobs.Select(j => ((string?)j.Kind, SettingOut))];

        internal BuildWork Work => new([.. Jobs.Select((j, i) => new Job($"{i}", j.Minutes) { Uses = [new Use("hands")] })], [], [new Resource("hands", 1)])
        {
            Sessions = [.. Enumerable.Range(0, Sessions).Select(s => new WorkSession(s * Day, (s * Day) + Session))],
        };

        internal int MostSaved() => Orders([.. Enumerable.Range(0, Jobs.Length)]).Max(order => Saved(order, 0, 0, 0, []));

        // What the rest of an order saves from a minute of a session on; far below nothing where it does not fit.
        private int Saved(int[] order, int next, int session, int minute, ImmutableHashSet<string> setOut)
        {
            if (next == order.Length)
            {
                return 0;
            }

            if (session == Sessions)
            {
                return -1_000_000;
            }

            var (kind, minutes) = Jobs[order[next]];
            var saving = setOut.Contains(kind) ? SettingOut : 0;
            var later = Saved(order, next, session + 1, 0, []);
            return minute + minutes - saving > Session ? later : Math.Max(later, saving + Saved(order, next + 1, session, minute + minutes - saving, setOut.Add(kind)));
        }

        internal void Holds(int[] starts, int[] minutes, IReadOnlyList<int> apart)
        {
            foreach (var group in Enumerable.Range(0, Jobs.Length).GroupBy(i => (Jobs[i].Kind, starts[i] / Day)))
            {
                var first = group.MinBy(i => starts[i]);
                Assert.Equal(Jobs[first].Minutes, minutes[first]);
                Assert.All(group.Where(i => i != first), i => Assert.True(starts[i] >= starts[first] + SettingOut));
            }

            Assert.All(Enumerable.Range(0, Jobs.Length), i => Assert.True(starts[i] + minutes[i] <= apart[i] + Jobs[i].Minutes));
            var inTime = Enumerable.Range(0, Jobs.Length).OrderBy(i => starts[i]).ToList();
            Assert.All(inTime.Zip(inTime.Skip(1)), p => Assert.True(starts[p.First] + minutes[p.First] <= starts[p.Second]));
        }

        private static IEnumerable<int[]> Orders(int[] jobs) => jobs.Length <= 1 ? [jobs] : jobs.SelectMany(j => Orders([.. jobs.Where(o => o != j)]).Select(rest => (int[])[j, .. rest]));
    }
}
