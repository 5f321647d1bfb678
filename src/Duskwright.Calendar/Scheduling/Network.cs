using System.Collections.Immutable;
using Duskwright.Calendar.Jobs;

namespace Duskwright.Calendar.Scheduling;

/// <summary>Work in indices: what the methods read. Every lag is an arc from start to start.</summary>
internal sealed class Network
{
    private Network(BuildWork work)
    {
        Work = work;
        var index = Indexed(work.Jobs.Select(j => j.Id), "job");
        var resources = Indexed(work.Resources.Select(r => r.Id), "resource");
        foreach (var job in work.Jobs)
        {
            if (job.Minutes < 0 || job.DryingMinutes < 0 || job.NotBefore < 0)
            {
                throw new ArgumentException($"{job.Id} has a negative time; 0 minutes or more is allowed.", nameof(work));
            }
        }

        if (work.Resources.FirstOrDefault(r => r.Capacity < 1) is { } none)
        {
            throw new ArgumentException($"There are {none.Capacity} of {none.Id}; 1 or more is allowed.", nameof(work));
        }

        for (var s = 0; s < work.Sessions.Length; s++)
        {
            if (work.Sessions[s].To <= work.Sessions[s].From || (s > 0 && work.Sessions[s].From < work.Sessions[s - 1].To))
            {
                throw new ArgumentException($"Session {s + 1} ends before it begins, or begins before the one before it has ended.", nameof(work));
            }
        }

        Minutes = [.. work.Jobs.Select(j => j.Minutes)];
        Uses = [.. work.Jobs.Select(j => j.Uses.Select(u => u is { Amount: >= 1, HeldAfterMinutes: >= 0 }
            ? (Number(resources, u.Resource, "resource"), u.Amount, u.HeldAfterMinutes)
            : throw new ArgumentException($"{j.Id} takes {u.Amount} of {u.Resource} and holds it {u.HeldAfterMinutes} minutes; 1 or more and 0 or more are allowed.", nameof(work))).ToImmutableArray())];
        Houses = [.. work.Jobs.Select(j => j.House).OfType<string>().Distinct(StringComparer.Ordinal)];
        HouseOf = [.. work.Jobs.Select(j => j.House is { } house ? Houses.IndexOf(house) : -1)];
        Arcs = [.. work.Lags.SelectMany((lag, l) => ArcsOf(lag, l, Number(index, lag.From, "job"), Number(index, lag.To, "job")))];
        Into = Arcs.ToLookup(a => a.To);
        OutOf = Arcs.ToLookup(a => a.From);
    }

    internal BuildWork Work { get; }

    internal int Count => Minutes.Length;

    internal ImmutableArray<int> Minutes { get; }

    /// <summary>What each job takes: resource, amount, minutes held after the hands-on time.</summary>
    internal ImmutableArray<ImmutableArray<(int Resource, int Amount, int Held)>> Uses { get; }

    internal ImmutableArray<string> Houses { get; }

    /// <summary>Index of each job's house; −1 for none.</summary>
    internal ImmutableArray<int> HouseOf { get; }

    internal ImmutableArray<Arc> Arcs { get; }

    internal ILookup<int, Arc> Into { get; }

    internal ILookup<int, Arc> OutOf { get; }

    internal static Network Of(BuildWork work) => new(work);

    /// <summary>The first minute from which the job can be done without leaving a session; none where there is none.</summary>
    internal int? Fitting(int job, int from)
    {
        if (Work.Sessions.IsEmpty || Minutes[job] == 0)
        {
            return from;
        }

        for (var s = SessionAt(from); s < Work.Sessions.Length; s++)
        {
            var start = Math.Max(from, Work.Sessions[s].From);
            if (start + Minutes[job] <= Work.Sessions[s].To)
            {
                return start;
            }
        }

        return null;
    }

    /// <summary>Index of the first session that has not ended at a minute.</summary>
    internal int SessionAt(int minute)
    {
        var (low, high) = (0, Work.Sessions.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = Work.Sessions[middle].To > minute ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    /// <summary>The minute all is done and dry when the jobs start so.</summary>
    internal int Finish(IReadOnlyList<int> starts) =>
        Enumerable.Range(0, Count).Select(j => starts[j] + Minutes[j] + Work.Jobs[j].DryingMinutes).DefaultIfEmpty(0).Max();

    /// <summary>The most houses begun and not ended at one time; a house ends with the last hands-on minute.</summary>
    internal int HalfBuilt(IReadOnlyList<int> starts)
    {
        var spans = Spans(starts);
        var changes = spans.Select(s => (Minute: s.First, Change: 1)).Concat(spans.Select(s => (Minute: s.Ended, Change: -1)));
        var (open, most) = (0, 0);
        foreach (var (_, change) in changes.OrderBy(c => c.Minute).ThenBy(c => c.Change))
        {
            open += change;
            most = Math.Max(most, open);
        }

        return most;
    }

    /// <summary>Houses that stand half built when a session ends, summed over the sessions; 0 where there are no sessions.</summary>
    internal int HalfBuiltEvenings(IReadOnlyList<int> starts) =>
        Work.Sessions.IsEmpty ? 0 : Spans(starts).Sum(s => Math.Max(0, LastSession(s.Ended) - SessionAt(s.First)));

    /// <summary>Index of the session in which work that ends at a minute is done.</summary>
    internal int LastSession(int ended) => SessionAt(Math.Max(0, ended - 1));

    private (int First, int Ended)[] Spans(IReadOnlyList<int> starts)
    {
        var spans = Enumerable.Repeat((First: int.MaxValue, Ended: 0), Houses.Length).ToArray();
        for (var j = 0; j < Count; j++)
        {
            if (HouseOf[j] is >= 0 and var h)
            {
                spans[h] = (Work.BegunHouses.Contains(Houses[h]) ? 0 : Math.Min(spans[h].First, starts[j]), Math.Max(spans[h].Ended, starts[j] + Minutes[j]));
            }
        }

        return spans;
    }

    private IEnumerable<Arc> ArcsOf(Lag lag, int index, int from, int to)
    {
        var offset = lag.Measured == LagStart.Finish ? Minutes[from] : 0;
        if (lag.AtLeast is { } least)
        {
            yield return new Arc(from, to, offset + least, index, IsLatest: false);
        }

        if (lag.AtMost is { } most)
        {
            yield return new Arc(to, from, -(offset + most), index, IsLatest: true);
        }
    }

    private static Dictionary<string, int> Indexed(IEnumerable<string> ids, string what)
    {
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var id in ids)
        {
            if (!index.TryAdd(id, index.Count))
            {
                throw new ArgumentException($"There are two of the {what} \"{id}\"; every name may stand once.", nameof(ids));
            }
        }

        return index;
    }

    private static int Number(Dictionary<string, int> index, string id, string what) =>
        index.TryGetValue(id, out var number) ? number : throw new ArgumentException($"There is no {what} \"{id}\".", nameof(id));
}

/// <summary>start(To) is at least start(From) + Minutes.</summary>
/// <param name="From">A job.</param>
/// <param name="To">A job.</param>
/// <param name="Minutes">Minutes; negative for a limit to the latest.</param>
/// <param name="Lag">Index of the lag it comes from.</param>
/// <param name="IsLatest">Whether it is the lag's latest turned round.</param>
internal readonly record struct Arc(int From, int To, int Minutes, int Lag, bool IsLatest);
