using System.Globalization;

namespace Duskwright.Calendar.Scheduling;

/// <summary>The earliest minute of each job by waits and sessions alone, as if hands were endless; or the waits that cannot be kept.</summary>
/// <remarks>Longest paths by label correcting (Bellman and Ford); with sessions the label is moved to the next minute at which the job fits.</remarks>
internal sealed record EarliestStarts(int[] Starts, string? Why)
{
    internal static EarliestStarts Of(Network network)
    {
        if (TooLong(network) is { } tooLong)
        {
            return new EarliestStarts([], tooLong);
        }

        var clock = Labels(network, inSessions: false);
        return clock.Why is null && !network.Work.Sessions.IsEmpty ? Labels(network, inSessions: true) : clock;
    }

    private static string? TooLong(Network network)
    {
        if (network.Work.Sessions.IsEmpty)
        {
            return null;
        }

        var longest = network.Work.Sessions.Max(s => s.To - s.From);
        var job = network.Work.Jobs.FirstOrDefault(j => j.Minutes > longest);
        return job is null
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"{job.Words} takes {job.Minutes} min in one go and the longest session has {longest} min: split it, or add a longer session.");
    }

    private static EarliestStarts Labels(Network network, bool inSessions)
    {
        var label = new int[network.Count];
        var (pushedBy, length) = (new Arc?[network.Count], new int[network.Count]);
        var (queue, queued) = (new Queue<int>(), new bool[network.Count]);
        for (var j = 0; j < network.Count; j++)
        {
            if (Moved(network, j, network.Work.Jobs[j].NotBefore, inSessions) is not { } first)
            {
                return new EarliestStarts([], Conflict.SessionsEnd(network, j));
            }

            label[j] = first;
            queue.Enqueue(j);
            queued[j] = true;
        }

        while (queue.TryDequeue(out var from))
        {
            queued[from] = false;
            foreach (var arc in network.OutOf[from])
            {
                if (label[from] + arc.Minutes <= label[arc.To])
                {
                    continue;
                }

                (pushedBy[arc.To], length[arc.To]) = (arc, length[from] + 1);

                // A path of more arcs than jobs goes through one job twice and still pushes: the waits go round in a circle.
                if ((!inSessions && length[arc.To] > network.Count) || Moved(network, arc.To, label[from] + arc.Minutes, inSessions) is not { } later)
                {
                    return new EarliestStarts([], Circle(pushedBy, arc.To) is { Count: > 0 } circle ? Conflict.Circle(network, circle, inSessions) : Conflict.SessionsEnd(network, arc.To));
                }

                label[arc.To] = later;
                if (!queued[arc.To])
                {
                    queue.Enqueue(arc.To);
                    queued[arc.To] = true;
                }
            }
        }

        return new EarliestStarts(label, null);
    }

    private static int? Moved(Network network, int job, int from, bool inSessions) => inSessions ? network.Fitting(job, from) : from;

    private static List<Arc> Circle(Arc?[] pushedBy, int job)
    {
        var seen = new HashSet<int>();
        while (seen.Add(job))
        {
            if (pushedBy[job] is not { } arc)
            {
                return [];
            }

            job = arc.From;
        }

        var (circle, at) = (new List<Arc>(), job);
        do
        {
            var arc = pushedBy[at]!.Value;
            circle.Insert(0, arc);
            at = arc.From;
        }
        while (at != job);
        return circle;
    }
}
