namespace Duskwright.Calendar.Scheduling;

/// <summary>A minute before which the work cannot be done and dry, whatever the order.</summary>
/// <remarks>
/// The later of the longest chain of waits and, for each resource, Jackson's pre-emptive schedule (Carlier, European Journal of
/// Operational Research 11 (1982) 42): jobs may be interrupted and shared out over all hands, the one with the longest tail going first.
/// Interrupting only helps, so no real schedule is earlier. Time is counted in minutes times hands, so that all figures are whole.
/// </remarks>
internal static class FinishBound
{
    /// <summary>The bound, or why the sessions cannot hold the work.</summary>
    internal static (int Minute, string? Why) Of(Network network, int[] earliest)
    {
        var tails = Tails(network);
        var bound = Enumerable.Range(0, network.Count).Select(j => earliest[j] + tails[j]).DefaultIfEmpty(0).Max();
        for (var r = 0; r < network.Work.Resources.Length; r++)
        {
            if (Shared(network, r, earliest, tails) is not { } minute)
            {
                return (bound, Conflict.NoRoom(network));
            }

            bound = Math.Max(bound, minute);
        }

        return (bound, null);
    }

    /// <summary>Minutes from each job's start to the end of all that must follow it.</summary>
    internal static int[] Tails(Network network)
    {
        var tails = Enumerable.Range(0, network.Count).Select(j => network.Minutes[j] + network.Work.Jobs[j].DryingMinutes).ToArray();
        var queue = new Queue<int>(Enumerable.Range(0, network.Count).Reverse());
        var queued = Enumerable.Repeat(true, network.Count).ToArray();
        while (queue.TryDequeue(out var job))
        {
            queued[job] = false;
            foreach (var arc in network.Into[job])
            {
                if (tails[job] + arc.Minutes > tails[arc.From])
                {
                    tails[arc.From] = tails[job] + arc.Minutes;
                    if (!queued[arc.From])
                    {
                        queue.Enqueue(arc.From);
                        queued[arc.From] = true;
                    }
                }
            }
        }

        return tails;
    }

    private static int? Shared(Network network, int resource, int[] earliest, int[] tails)
    {
        long hands = network.Work.Resources[resource].Capacity;
        var pieces = (
            from j in Enumerable.Range(0, network.Count)
            from use in network.Uses[j]
            let minutes = network.Minutes[j] + use.Held
            where use.Resource == resource && minutes > 0
            orderby earliest[j]
            select (Head: earliest[j] * hands, Left: (long)minutes * use.Amount, Tail: tails[j] - minutes, use.Held)).ToList();

        // A place that is held while it dries is held through the night: sessions do not limit it.
        var sessions = pieces.Exists(p => p.Held > 0) ? [] : network.Work.Sessions;
        var (ready, next, time, bound) = (new PriorityQueue<int, int>(), 0, 0L, 0);
        var left = pieces.Select(p => p.Left).ToArray();
        while (next < pieces.Count || ready.Count > 0)
        {
            time = ready.Count == 0 ? Math.Max(time, pieces[next].Head) : time;
            var until = long.MaxValue;
            if (!sessions.IsEmpty)
            {
                var s = network.SessionAt((int)(time / hands));
                if (s == sessions.Length)
                {
                    return null;
                }

                (time, until) = (Math.Max(time, sessions[s].From * hands), sessions[s].To * hands);
            }

            while (next < pieces.Count && pieces[next].Head <= time)
            {
                ready.Enqueue(next, -pieces[next].Tail);
                next++;
            }

            var piece = ready.Peek();
            var stop = Math.Min(Math.Min(until, time + left[piece]), next < pieces.Count ? pieces[next].Head : long.MaxValue);
            left[piece] -= stop - time;
            time = stop;
            if (left[piece] == 0)
            {
                ready.Dequeue();
                bound = Math.Max(bound, checked((int)((time + hands - 1) / hands)) + pieces[piece].Tail);
            }
        }

        return bound;
    }
}
