using Duskwright.Plan;

namespace Duskwright.Study.Lists;

/// <summary>Makes the load list.</summary>
internal static class LoadRows
{
    internal static ItemList<LoadRow> Of(TownStudy study) => study.Buildings.Select(b => new LoadRow(
        b.Code,
        b.Building.Name,
        b.Lamps.Count,
        string.Join(", ", b.Lamps.GroupBy(l => l.PartUnknown ? "unknown" : l.Part.Name).Select(g => $"{g.Count()} × {g.Key}")),
        Joined(b.Lamps.Select(l => l.SwitchGroup)),
        Joined(b.Lamps.Select(l => l.Supply)),
        b.Current)).ToItemList();

    private static string? Joined(IEnumerable<string?> ids)
    {
        var all = ids.OfType<string>().Distinct().ToList();
        return all.Count == 0 ? null : string.Join(" + ", all);
    }
}
