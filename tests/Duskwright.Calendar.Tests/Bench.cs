using Duskwright.Calendar.Jobs;
using Duskwright.Calendar.Scheduling;

namespace Duskwright.Calendar.Tests;

/// <summary>Small pieces of work, and what every schedule must keep to, written without the engine.</summary>
internal static class Bench
{
    /// <summary>One pair of hands for every job.</summary>
    internal static Job Step(string id, int minutes, string? house = null, int drying = 0, int notBefore = 0) =>
        new(id, minutes) { Uses = minutes > 0 ? [new Use("hands")] : [], House = house, DryingMinutes = drying, NotBefore = notBefore };

    internal static BuildWork Work(Job[] jobs, Lag[] lags, int hands = 1, params WorkSession[] sessions) =>
        new([.. jobs], [.. lags], [new Resource("hands", hands)]) { Sessions = [.. sessions] };

    /// <summary>Evenings of so many minutes, one a day from seven o'clock, the calendar starting at midnight.</summary>
    internal static WorkSession[] Evenings(int count, int minutes) =>
        [.. Enumerable.Range(0, count).Select(day => new WorkSession((day * 1440) + 1140, (day * 1440) + 1140 + minutes))];

    /// <summary>Every rule the starts break, in words; empty for a sound schedule.</summary>
    internal static IReadOnlyList<string> Broken(BuildWork work, IReadOnlyList<int> starts)
    {
        var broken = new List<string>();
        var at = work.Jobs.Select((j, i) => (j.Id, Start: starts[i], End: starts[i] + j.Minutes)).ToDictionary(x => x.Id);
        broken.AddRange(work.Jobs.Where(j => at[j.Id].Start < j.NotBefore).Select(j => $"{j.Id} too early"));
        foreach (var lag in work.Lags)
        {
            var waited = at[lag.To].Start - (lag.Measured == LagStart.Start ? at[lag.From].Start : at[lag.From].End);
            if (waited < (lag.AtLeast ?? int.MinValue) || waited > (lag.AtMost ?? int.MaxValue))
            {
                broken.Add($"{lag.To} waits {waited} min for {lag.From}");
            }
        }

        broken.AddRange(work.Jobs.Where(j => j.Minutes > 0 && work.Sessions.Length > 0 && !work.Sessions.Any(s => s.From <= at[j.Id].Start && at[j.Id].End <= s.To)).Select(j => $"{j.Id} outside the sessions"));
        foreach (var resource in work.Resources)
        {
            var taken = work.Jobs.SelectMany(j => j.Uses.Where(u => u.Resource == resource.Id).Select(u => (at[j.Id].Start, End: at[j.Id].End + u.HeldAfterMinutes, u.Amount))).ToList();
            broken.AddRange(taken.Where(t => t.End > t.Start && taken.Where(o => o.Start <= t.Start && t.Start < o.End).Sum(o => o.Amount) > resource.Capacity).Select(t => $"too much of {resource.Id} at {t.Start}"));
        }

        return broken;
    }

    /// <summary>The earliest finish by trying every minute for every job; none where nothing works before the horizon.</summary>
    internal static int? ByEnumeration(BuildWork work, int horizon)
    {
        int? best = null;
        var starts = new int[work.Jobs.Length];
        void Try(int job)
        {
            if (job == starts.Length)
            {
                if (Broken(work, starts).Count == 0)
                {
                    var finish = work.Jobs.Select((j, i) => starts[i] + j.Minutes + j.DryingMinutes).Max();
                    best = Math.Min(best ?? int.MaxValue, finish);
                }

                return;
            }

            for (starts[job] = 0; starts[job] <= horizon; starts[job]++)
            {
                Try(job + 1);
            }
        }

        Try(0);
        return best;
    }

    /// <summary>Of all schedules with the earliest finish, the fewest houses half built at once, and over all schedules the smallest sum over the evenings; by trying every minute.</summary>
    internal static (int Finish, int AtOnce, int Evenings) HalfBuiltByEnumeration(BuildWork work, int horizon)
    {
        var (best, evenings, starts) = ((Finish: int.MaxValue, AtOnce: int.MaxValue), int.MaxValue, new int[work.Jobs.Length]);
        void Try(int job)
        {
            if (job == starts.Length)
            {
                if (Broken(work, starts).Count == 0)
                {
                    var houses = work.Jobs.Select((j, i) => (j.House, Start: starts[i], End: starts[i] + j.Minutes)).GroupBy(j => j.House).Select(g => (First: g.Min(j => j.Start), Last: g.Max(j => j.End))).ToList();
                    var now = (work.Jobs.Select((j, i) => starts[i] + j.Minutes + j.DryingMinutes).Max(), Enumerable.Range(0, horizon + 10).Max(t => houses.Count(h => h.First <= t && t < h.Last)));
                    best = now.CompareTo(best) < 0 ? now : best;
                    evenings = Math.Min(evenings, work.Sessions.Sum(s => houses.Count(h => h.First < s.To && h.Last > s.To)));
                }

                return;
            }

            foreach (var session in work.Sessions)
            {
                for (starts[job] = session.From; starts[job] < session.To && starts[job] <= horizon; starts[job]++)
                {
                    Try(job + 1);
                }
            }
        }

        Try(0);
        return (best.Finish, best.AtOnce, evenings);
    }

    internal static Schedule Planned(BuildWork work) => BuildSchedule.Plan(work, TestContext.Current.CancellationToken);
}
