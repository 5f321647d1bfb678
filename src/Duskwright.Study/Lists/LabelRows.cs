using System.Globalization;
using Duskwright.Plan;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Lists;

/// <summary>Makes the labels: code of the house, switch and place on its strip.</summary>
internal static class LabelRows
{
    internal static ItemList<LabelRow> Of(TownStudy study)
    {
        var place = new Dictionary<string, int>(StringComparer.Ordinal);
        return study.Buildings.SelectMany(b => b.Lamps.GroupBy(l => l.SwitchGroup).Select(pair =>
        {
            var (group, lamps) = (pair.Key, pair.ToList());
            var terminal = group is null ? "" : string.Create(CultureInfo.InvariantCulture, $"{group}{place[group] = place.GetValueOrDefault(group) + 1}");
            var count = lamps.Count == 1 ? "1 LED" : $"{lamps.Count} LEDs";
            var current = lamps.Count == b.Lamps.Count ? b.Current : lamps.All(l => l.Current is not null) ? Figure.From(Laws.Sum, "current of its lamps", "A", [.. lamps.Select(l => l.Current!)]) : null;
            var circuit = study.Packs.FirstOrDefault(p => p.Supply.Id == lamps[0].Supply)?.Number ?? 0;
            return new LabelRow(b.Code, terminal, b.Building.Name, current is null ? count : $"{count}, {FigureText.Of(current)}", circuit);
        })).ToItemList();
    }
}
