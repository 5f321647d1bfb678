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
        return study.Buildings.Where(b => b.Lamps.Count > 0).Select(b =>
        {
            var group = b.Lamps[0].SwitchGroup;
            var terminal = group is null ? "" : string.Create(CultureInfo.InvariantCulture, $"{group}{place[group] = place.GetValueOrDefault(group) + 1}");
            var count = b.Lamps.Count == 1 ? "1 LED" : $"{b.Lamps.Count} LEDs";
            return new LabelRow(b.Code, terminal, b.Building.Name, b.Current is null ? count : $"{count}, {FigureText.Of(b.Current)}", b.Circuit);
        }).ToItemList();
    }
}
