using System.Globalization;
using Duskwright.Calendar.Jobs;

namespace Duskwright.Calendar.Scheduling;

/// <summary>Says in words what cannot be kept.</summary>
internal static class Conflict
{
    internal static string Circle(Network network, IEnumerable<Arc> circle, bool inSessions)
    {
        var waits = string.Join("; ", circle.Select(arc => Said(network, network.Work.Lags[arc.Lag], arc.IsLatest)));
        return inSessions
            ? $"No session lets these be kept together: {waits}. Add a longer session, or loosen one of them."
            : $"These waits go round in a circle: {waits}. Loosen one of them.";
    }

    internal static string Windows(Network network, IReadOnlyList<int> lags) => lags.Count == 0
        ? NoRoom(network)
        : $"There are not enough hands or places to keep {(lags.Count == 1 ? "this" : "these together")}: {string.Join("; ", lags.Select(l => Said(network, network.Work.Lags[l], latest: true)))}. Loosen one of them, or do it with more hands.";

    internal static string SessionsEnd(Network network, int job) =>
        $"The sessions end before {network.Work.Jobs[job].Words} can be done: add sessions.";

    internal static string NoRoom(Network network)
    {
        var (work, room) = (network.Minutes.Sum(m => (long)m) / 60.0, network.Work.Sessions.Sum(s => (long)s.To - s.From) / 60.0);
        return string.Create(CultureInfo.InvariantCulture, $"The work takes {work:0.#} h of hands and does not fit into the sessions of {room:0.#} h in all: add sessions.");
    }

    private static string Said(Network network, Lag lag, bool latest)
    {
        string Words(string id) => network.Work.Jobs.First(j => j.Id == id).Words;
        var anchor = lag.Measured == LagStart.Start ? $"the start of {Words(lag.From)}" : Words(lag.From);
        return latest
            ? string.Create(CultureInfo.InvariantCulture, $"{Words(lag.To)} at most {lag.AtMost} min after {anchor}")
            : string.Create(CultureInfo.InvariantCulture, $"{Words(lag.To)} at least {lag.AtLeast} min after {anchor}");
    }
}
