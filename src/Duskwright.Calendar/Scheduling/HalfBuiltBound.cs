namespace Duskwright.Calendar.Scheduling;

/// <summary>How many half-built houses no schedule can do without.</summary>
/// <remarks>
/// Each house alone, with endless hands, is begun in the session that suits it best; from there its own waits and the sessions say in
/// which session it ends at the earliest. Those sessions are summed over the houses. What is half built on an average evening cannot be
/// more than what is half built on the worst one (Little, Operations Research 9 (1961) 383, the same sum counted by houses and by evenings).
/// </remarks>
internal static class HalfBuiltBound
{
    /// <summary>The bounds.</summary>
    /// <param name="network">The work.</param>
    /// <param name="earliest">The earliest start of each job.</param>
    /// <param name="finish">The minute by which all is done and dry.</param>
    /// <returns>The least of houses half built at once by that finish, and of half-built houses summed over the evenings, whatever the finish.</returns>
    internal static (int AtOnce, int Evenings) Of(Network network, int[] earliest, int finish)
    {
        var jobs = Enumerable.Range(0, network.Count).Where(j => network.HouseOf[j] >= 0).GroupBy(j => network.HouseOf[j]).ToDictionary(g => g.Key, g => g.ToArray());
        var begun = jobs.Where(h => network.Work.BegunHouses.Contains(network.Houses[h.Key]) && h.Value.Any(j => network.Minutes[j] > 0)).Select(h => h.Key).ToHashSet();
        var least = Math.Max(begun.Count, jobs.Values.Any(h => h.Any(j => network.Minutes[j] > 0)) ? 1 : 0);
        if (network.Work.Sessions.IsEmpty)
        {
            return (least, 0);
        }

        var sessions = network.SessionAt(Math.Max(0, finish - 1));
        var known = new Dictionary<string, int>(StringComparer.Ordinal);
        var evenings = 0;
        foreach (var (house, its) in jobs)
        {
            evenings += begun.Contains(house) ? its.Max(j => network.LastSession(earliest[j] + network.Minutes[j])) : Alone(network, its, sessions, known);
        }

        return (Math.Max(least, sessions == 0 ? 0 : (evenings + sessions - 1) / sessions), evenings);
    }

    // Houses of the same steps take the same time: looked at once.
    private static int Alone(Network network, int[] jobs, int sessions, Dictionary<string, int> known)
    {
        var place = jobs.Select((j, i) => (j, i)).ToDictionary(x => x.j, x => x.i);
        var waits = jobs.SelectMany(j => network.OutOf[j].Where(a => a.Minutes >= 0 && place.ContainsKey(a.To)).Select(a => (From: place[j], To: place[a.To], a.Minutes))).ToArray();
        var shape = string.Join(';', jobs.Select(j => $"{network.Minutes[j]},{network.Work.Jobs[j].NotBefore}")) + "|" + string.Join(';', waits);
        if (!known.TryGetValue(shape, out var fewest))
        {
            known[shape] = fewest = Enumerable.Range(0, sessions + 1).Select(s => From(network, jobs, waits, s)).OfType<int>().DefaultIfEmpty(0).Min();
        }

        return fewest;
    }

    private static int? From(Network network, int[] jobs, (int From, int To, int Minutes)[] waits, int session)
    {
        var begin = session == 0 ? 0 : network.Work.Sessions[session - 1].To;
        var starts = new int[jobs.Length];
        for (var i = 0; i < jobs.Length; i++)
        {
            if (network.Fitting(jobs[i], Math.Max(begin, network.Work.Jobs[jobs[i]].NotBefore)) is not { } first)
            {
                return null;
            }

            starts[i] = first;
        }

        for (var moved = true; moved;)
        {
            moved = false;
            foreach (var (from, to, minutes) in waits)
            {
                if (starts[to] < starts[from] + minutes)
                {
                    if (network.Fitting(jobs[to], starts[from] + minutes) is not { } later)
                    {
                        return null;
                    }

                    (starts[to], moved) = (later, true);
                }
            }
        }

        return Math.Max(0, jobs.Select((j, i) => network.LastSession(starts[i] + network.Minutes[j])).Max() - session);
    }
}
