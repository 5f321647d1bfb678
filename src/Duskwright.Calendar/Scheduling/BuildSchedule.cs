using System.Globalization;
using Duskwright.Calendar.Jobs;
using Google.OrTools.Sat;

namespace Duskwright.Calendar.Scheduling;

/// <summary>Puts work into sessions: earliest finish first, then fewest half-built houses at once, then the smallest sum of them over the evenings.</summary>
/// <remarks>
/// A ladder: what waits alone make impossible is named; rules give a schedule and relaxations a bound; where they do not meet and the
/// work is small enough, a constraint solver closes the gap. Equal work gives an equal schedule.
/// </remarks>
public static class BuildSchedule
{
    // So many houses may be open, and so many of the last ones are done side by side, in the rules that are tried.
    private static readonly int[] OpenLimits = [1, 2, 3, 4, 6, 8, 10, 12, 16, 24];
    private static readonly int[] LastTogether = [0, 6, 10, 16];

    /// <summary>Schedules the work.</summary>
    /// <param name="work">Jobs, waits, hands and sessions.</param>
    /// <param name="cancel">Stops the search; the best schedule so far is given.</param>
    /// <returns>A schedule with its bound, or in words why there is none.</returns>
    /// <exception cref="ArgumentException">A name stands twice or points at nothing, a time is negative, or sessions overlap.</exception>
    public static Schedule Plan(BuildWork work, CancellationToken cancel = default) => Plan(work, new ScheduleSettings(), cancel);

    /// <summary>Schedules the work.</summary>
    /// <param name="work">Jobs, waits, hands and sessions.</param>
    /// <param name="settings">Seed and limits.</param>
    /// <param name="cancel">Stops the search; the best schedule so far is given.</param>
    /// <returns>A schedule with its bound, or in words why there is none.</returns>
    /// <exception cref="ArgumentException">A name stands twice or points at nothing, a time is negative, or sessions overlap.</exception>
    public static Schedule Plan(BuildWork work, ScheduleSettings settings, CancellationToken cancel = default)
    {
        var network = Network.Of(work);
        var earliest = EarliestStarts.Of(network);
        if ((TooMuch(work) ?? earliest.Why) is { } impossible)
        {
            return Schedule.None(ScheduleStatus.Impossible, impossible);
        }

        var (bound, noRoom) = FinishBound.Of(network, earliest.Starts);
        if (noRoom is not null)
        {
            return Schedule.None(ScheduleStatus.Impossible, noRoom, bound);
        }

        var best = ByRules(network, earliest.Starts, settings.FinishSlack, cancel);
        if (network.Count > settings.MostExactJobs)
        {
            return best is null
                ? Schedule.None(ScheduleStatus.NotFound, "No order was found that keeps all latest times; loosen some of them, or schedule fewer houses at once.", bound)
                : Answer(network, earliest.Starts, best, bound, 1);
        }

        if (best is null || network.Finish(best) > bound)
        {
            var horizon = best is null ? Horizon(network) : network.Finish(best);
            var (status, starts, proved) = new ExactModel(network, earliest.Starts, horizon).EarliestFinish(bound, best, settings, cancel);
            if (status is CpSolverStatus.Infeasible)
            {
                var clash = new ExactModel(network, earliest.Starts, horizon, namedWindows: true).ClashingWindows(settings, cancel);
                return Schedule.None(ScheduleStatus.Impossible, Conflict.Windows(network, clash), bound);
            }

            if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible)
            {
                (best, bound) = (starts, Math.Max(bound, proved));
            }
        }

        return best is null
            ? Schedule.None(ScheduleStatus.NotFound, "No schedule was found within the limit.", bound)
            : FewestHalfBuilt(network, earliest.Starts, best, bound, settings, cancel);
    }

    private static Schedule FewestHalfBuilt(Network network, int[] earliest, int[] best, int bound, ScheduleSettings settings, CancellationToken cancel)
    {
        var most = network.HalfBuilt(best);
        if (most <= 1)
        {
            return Answer(network, earliest, best, bound, most);
        }

        var (status, starts, proved) = new ExactModel(network, earliest, network.Finish(best)).FewestHalfBuilt(best, most, settings, cancel);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? Answer(network, earliest, starts, bound, proved) : Answer(network, earliest, best, bound, 1);
    }

    private static Schedule Answer(Network network, int[] earliest, int[] starts, int bound, int halfBuiltBound)
    {
        var finish = network.Finish(starts);
        var (atOnce, evenings) = HalfBuiltBound.Of(network, earliest, finish);
        return new Schedule(finish == bound ? ScheduleStatus.Earliest : ScheduleStatus.Found, [.. starts], finish, bound, network.HalfBuilt(starts), Math.Max(atOnce, halfBuiltBound), null)
        {
            HalfBuiltEvenings = network.HalfBuiltEvenings(starts),
            HalfBuiltEveningsBound = evenings,
        };
    }

    private static string? TooMuch(BuildWork work)
    {
        var capacity = work.Resources.ToDictionary(r => r.Id, StringComparer.Ordinal);
        var (job, use) = work.Jobs.SelectMany(j => j.Uses.Select(u => (j, u))).FirstOrDefault(x => x.u.Amount > capacity[x.u.Resource].Capacity);
        return job is null
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"{job.Words} takes {use.Amount} of {capacity[use.Resource].Words} and there are {capacity[use.Resource].Capacity}: do it in parts, or find more.");
    }

    // House by house, and ever more of the last ones side by side: each of them must still dry when nothing else is left to do.
    private static int[]? ByRules(Network network, int[] earliest, int finishSlack, CancellationToken cancel)
    {
        var tails = FinishBound.Tails(network);
        var order = Enumerable.Range(0, network.Count).ToList();
        var (places, houses) = (HousePlaces(network), network.Houses.Length);
        var found = new List<(int Finish, int HalfBuilt, int Evenings, int[] Starts)>();
        bool Try(int[] rank, int mostOpen)
        {
            if (RuleScheduler.Run(network, earliest, rank, mostOpen, cancel) is not { } starts)
            {
                return true;
            }

            var halfBuilt = network.HalfBuilt(starts);
            found.Add((network.Finish(starts), halfBuilt, network.HalfBuiltEvenings(starts), starts));

            // Where the limit was not reached, a wider one changes nothing.
            return halfBuilt >= mostOpen;
        }

        void TryLimits(int[] rank) => _ = OpenLimits.Where(l => l < houses).Append(int.MaxValue).TakeWhile(limit => Try(rank, limit)).Count();
        Try(Ranks(order.OrderByDescending(j => tails[j]).ThenBy(j => j)), int.MaxValue);
        Try(Ranks(order.OrderByDescending(j => tails[j] - network.Minutes[j]).ThenBy(j => j)), int.MaxValue);
        foreach (var last in LastTogether.Where(l => l <= houses))
        {
            TryLimits(Ranks(order.OrderBy(j => network.HouseOf[j] < 0 ? -1 : Math.Min(places[network.HouseOf[j]], houses - last)).ThenByDescending(j => tails[j]).ThenBy(j => j)));
        }

        return found.Count == 0 ? null : found.Where(f => f.Finish <= found.Min(o => o.Finish) + finishSlack).MinBy(f => (f.HalfBuilt, f.Evenings, f.Finish)).Starts;
    }

    // Houses that were begun come first, those that are ended soonest before the others.
    private static int[] HousePlaces(Network network)
    {
        var left = new int[network.Houses.Length];
        for (var j = 0; j < network.Count; j++)
        {
            if (network.HouseOf[j] is >= 0 and var h)
            {
                left[h] += network.Minutes[j];
            }
        }

        var houses = Enumerable.Range(0, left.Length).OrderBy(h => network.Work.BegunHouses.Contains(network.Houses[h]) ? (0, left[h]) : (1, 0)).ThenBy(h => h).ToArray();
        var places = new int[houses.Length];
        for (var i = 0; i < houses.Length; i++)
        {
            places[houses[i]] = i;
        }

        return places;
    }

    private static int[] Ranks(IEnumerable<int> order)
    {
        var rank = new Dictionary<int, int>();
        foreach (var job in order)
        {
            rank[job] = rank.Count;
        }

        return [.. Enumerable.Range(0, rank.Count).Select(j => rank[j])];
    }

    // One job after another, each with its longest wait: where there is a schedule at all, one ends by then.
    private static int Horizon(Network network) => network.Work.Sessions.IsEmpty
        ? network.Work.Jobs.Select(j => j.NotBefore).DefaultIfEmpty(0).Max()
            + Enumerable.Range(0, network.Count).Sum(j => Math.Max(
                network.Minutes[j] + Math.Max(network.Work.Jobs[j].DryingMinutes, network.Uses[j].Select(u => u.Held).DefaultIfEmpty(0).Max()),
                network.OutOf[j].Select(a => a.Minutes).DefaultIfEmpty(0).Max()))
        : network.Work.Sessions[^1].To + network.Work.Jobs.Max(j => j.DryingMinutes);
}
