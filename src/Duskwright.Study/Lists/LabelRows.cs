using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Study.Lists;

/// <summary>Makes the labels: code of the house, switch and place on its strip.</summary>
internal static class LabelRows
{
    // To be written on by hand, for as long as nobody has counted.
    private const string ToBeCounted = "? LEDs: _________";

    internal static ItemList<LabelRow> Of(TownStudy study)
    {
        var place = new Dictionary<string, int>(StringComparer.Ordinal);
        string NextOn(string group) => string.Create(CultureInfo.InvariantCulture, $"{group}{place[group] = place.GetValueOrDefault(group) + 1}");
        var codes = study.Buildings.ToDictionary(b => b.Building.Key, b => b.Code, StringComparer.Ordinal);
        var starts = SharedRuns.Starts(study.Town);
        string Terminal(BuildingResult house, string? group) =>
            starts.TryGetValue(house.Building.Key, out var from) ? codes.GetValueOrDefault(from, from) : group is null ? "" : NextOn(group);
        var houses = study.Buildings.SelectMany(b => IsUncounted(b) ? [new LabelRow(b.Code, Terminal(b, b.Building.SwitchGroup), b.Building.Name, ToBeCounted, b.Circuit)] : b.Lamps.GroupBy(l => l.SwitchGroup).Select(pair =>
        {
            var (group, lamps) = (pair.Key, pair.ToList());
            var count = lamps.Count == 1 ? "1 LED" : $"{lamps.Count} LEDs";
            var current = lamps.Count == b.Lamps.Count ? b.Current : lamps.All(l => l.Current is not null) ? Figure.From(Laws.Sum, "current of its lamps", "A", [.. lamps.Select(l => l.Current!)]) : null;
            var circuit = study.Packs.FirstOrDefault(p => p.Supply.Id == lamps[0].Supply)?.Number ?? 0;
            return new LabelRow(b.Code, Terminal(b, group), b.Building.Name, current is null ? count : $"{count}, {FigureText.Of(current)}", circuit);
        })).ToList();
        var taps = study.Town.Taps.Select(t => new LabelRow(
            t.Id,
            t.From is { } from ? codes.GetValueOrDefault(from, from) : NextOn(t.SwitchGroup),
            $"Shared pair to tap {t.Id}",
            $"switch {t.SwitchGroup}",
            study.Buildings.FirstOrDefault(b => b.Lamps.Any(l => l.SwitchGroup == t.SwitchGroup))?.Circuit ?? 0)).ToList();
        return houses.Concat(taps).ToItemList();
    }

    // Its pair is laid all the same, and takes its place on the strip now: else the labels after it would be wrong once it is counted.
    private static bool IsUncounted(BuildingResult house) => house.Building.Leds is null && house.Lamps.Count == 0;
}
