using Duskwright.Calendar.Jobs;

namespace Duskwright.Proposals;

/// <summary>Work of one kind on one evening is set out once: paint is mixed once for ten roofs, and the evening ends sooner.</summary>
/// <remarks>
/// The calendar itself counts every step with its own setting out, so that it holds whatever comes between. Within each session the
/// jobs are then taken up in the same order, each as soon as a hand, a place to dry and what it waits for allow it; the first of a kind bears its setting out, and what
/// begins after that was done is shorter. No job ends later than it did.
/// </remarks>
internal static class SharedSettingOut
{
    /// <summary>Shares the setting out within each session.</summary>
    /// <param name="work">The work; each job's minutes hold its own setting out. Its waits are counted from the end of the job before.</param>
    /// <param name="kinds">Of each job, its kind and how many of its minutes are setting out; no kind for one that has none to share.</param>
    /// <param name="starts">When each job is begun where nothing is shared, minutes.</param>
    /// <returns>When each is begun, and how long it takes.</returns>
    internal static (int[] Starts, int[] Minutes) Of(BuildWork work, IReadOnlyList<(string? Kind, int Minutes)> kinds, IReadOnlyList<int> starts)
    {
        var place = work.Jobs.Select((j, i) => (j.Id, i)).ToDictionary(x => x.Id, x => x.i, StringComparer.Ordinal);
        var waits = work.Lags.ToLookup(l => place[l.To], l => (From: place[l.From], Minutes: l.AtLeast ?? 0));
        var capacity = work.Resources.ToDictionary(r => r.Id, r => r.Capacity, StringComparer.Ordinal);
        var taken = capacity.Keys.ToDictionary(r => r, _ => new List<(int From, int To)>(), StringComparer.Ordinal);
        var setOut = new Dictionary<(string Kind, int Session), int>();
        var (begun, minutes, last) = (starts.ToArray(), work.Jobs.Select(j => j.Minutes).ToArray(), 0);
        foreach (var job in Enumerable.Range(0, starts.Count).OrderBy(i => starts[i]))
        {
            var session = SessionOf(work, starts[job]);
            var ready = waits[job].Select(w => begun[w.From] + minutes[w.From] + w.Minutes).Append(work.Jobs[job].NotBefore).Append(work.Sessions[session].From).Append(last).Max();
            bool IsFree(int at) => work.Jobs[job].Uses.All(u => taken[u.Resource].Count(t => t.From <= at && at < t.To) < capacity[u.Resource]);
            begun[job] = work.Jobs[job].Uses.SelectMany(u => taken[u.Resource].Select(t => t.To)).Append(ready).Where(at => at >= ready && at < starts[job] && IsFree(at)).DefaultIfEmpty(starts[job]).Min();
            last = begun[job];
            if (kinds[job] is { Kind: { } kind, Minutes: var own })
            {
                if (!setOut.TryAdd((kind, session), begun[job] + own) && setOut[(kind, session)] <= begun[job])
                {
                    minutes[job] -= own;
                }
            }

            foreach (var use in work.Jobs[job].Uses)
            {
                taken[use.Resource].Add((begun[job], begun[job] + minutes[job] + use.HeldAfterMinutes));
            }
        }

        return (begun, minutes);
    }

    /// <summary>What no calendar in these sessions saves more than.</summary>
    /// <param name="work">The work.</param>
    /// <param name="kinds">Of each job, its kind and its setting out.</param>
    /// <param name="hands">Pairs of hands.</param>
    /// <returns>Minutes: each kind is set out at least as often as the longest session, filled with nothing else, needs to hold all of it.</returns>
    internal static int MostSaved(BuildWork work, IReadOnlyList<(string? Kind, int Minutes)> kinds, int hands)
    {
        var longest = hands * work.Sessions.Select(s => s.To - s.From).DefaultIfEmpty(0).Max();
        return Enumerable.Range(0, kinds.Count).Where(i => kinds[i].Kind is not null).GroupBy(i => kinds[i]).Sum(kind =>
        {
            var rest = kind.Sum(i => work.Jobs[i].Minutes - kind.Key.Minutes);
            var least = Math.Max(1, (int)Math.Ceiling(rest / (double)Math.Max(1, longest - kind.Key.Minutes)));
            return Math.Max(0, kind.Count() - least) * kind.Key.Minutes;
        });
    }

    private static int SessionOf(BuildWork work, int start)
    {
        var (low, high) = (0, work.Sessions.Length - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = work.Sessions[middle].From <= start ? (middle, high) : (low, middle - 1);
        }

        return low;
    }
}
