using Duskwright.Harness.Laying;
using Duskwright.Plan.Document;

namespace Duskwright.Study.Lists;

/// <summary>Shared pairs in the laying order: each is laid, and its tap jointed, before the first house that needs it.</summary>
internal sealed class SharedLaying(Town town, IReadOnlySet<string> laid, IReadOnlyDictionary<string, string> names)
{
    private const int ConductorsOfPair = 2;

    private readonly IReadOnlyDictionary<string, string> _starts = SharedRuns.Starts(town);
    private readonly HashSet<string> _done = [.. town.Taps.Where(t => laid.Contains(t.Id)).Select(t => t.Id)];

    /// <summary>The shared pairs to lay before a house's own, those nearer the bank first.</summary>
    internal IEnumerable<(LayingAct Act, string Run, string Do, string Because)> Before(string house)
    {
        var way = new Stack<Tap>();
        for (var at = _starts.GetValueOrDefault(house); at is not null; at = _starts.GetValueOrDefault(at))
        {
            if (town.Taps.FirstOrDefault(t => t.Id == at) is { } tap && !_done.Contains(tap.Id))
            {
                way.Push(tap);
            }
        }

        while (way.TryPop(out var tap))
        {
            _done.Add(tap.Id);
            var along = tap.Wireways.Count > 0 ? $" along {string.Join(", ", tap.Wireways)}" : "";
            yield return (LayingAct.LayShared, tap.Id, $"Lay the shared pair of switch {tap.SwitchGroup} from {Place(tap.From)} to tap {tap.Id}{along}, and test it there with a lamp", $"{names[house]} is joined on beyond it");
        }
    }

    /// <summary>Where the pair of a house is joined on, and which pairs go on from it, as words that follow "through hole H4"; empty where it runs to the bank alone.</summary>
    internal string Joined(string house)
    {
        var onward = _starts.Where(s => s.Value == house).Select(s => names.TryGetValue(s.Key, out var next) ? next : $"tap {s.Key}").ToList();
        var from = _starts.TryGetValue(house, out var start) ? $", join it on at {Place(start)}" : "";
        return onward.Count == 0 ? from : $"{from}, pull the pair that goes on to {string.Join(" and ", onward)} beside it and join both in the house";
    }

    /// <summary>How many joints of shared pairs nobody reaches once the town stands.</summary>
    internal IEnumerable<string> Notes(IEnumerable<Building> placed)
    {
        var begun = _starts.Values.ToHashSet(StringComparer.Ordinal);
        var shut = placed.Count(b => begun.Contains(b.Key) && b.Roof?.LiftsOff != true);
        var joints = ConductorsOfPair * (town.Taps.Count + shut);
        if (joints > 0)
        {
            yield return $"{joints} joints of shared pairs, at taps under the board and in houses whose roof does not lift off, cannot be reached once the town stands: sleeve and test each before it is covered.";
        }
    }

    private string Place(string? start) => start is null ? "the bank" : names.TryGetValue(start, out var house) ? $"the joint in {house}" : $"tap {start}";
}
