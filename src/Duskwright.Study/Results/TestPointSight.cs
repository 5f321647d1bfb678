using Duskwright.Plan;

namespace Duskwright.Study.Results;

/// <summary>Which lamps of a house are told by eye once its roof is on: those without which some pane loses half of its light or more.</summary>
/// <param name="Told">Names of lamps whose loss is seen.</param>
/// <param name="Untold">Names of lamps whose loss is not, or of which no pane is described.</param>
internal sealed record TestPointSight(ItemList<string> Told, ItemList<string> Untold)
{
    // Half its own light is where a pane is seen to be dim (CIE L* 76).
    private const double SeenLoss = 0.5;

    internal static TestPointSight Of(IReadOnlyList<LampResult> lamps, IReadOnlyList<PaneResult> panes)
    {
        var lit = lamps.Select(l => l.Name).ToHashSet(StringComparer.Ordinal);

        // A house whose panes are not described and that has one lamp is lit or dark.
        bool IsTold(LampResult lamp) => lamps.Count == 1 || panes.Any(p => p.Lamps.Any(l => l.Lamp == lamp.Name && l.Luminance >= SeenLoss * p.Lamps.Where(x => lit.Contains(x.Lamp)).Sum(x => x.Luminance)));
        return new TestPointSight(lamps.Where(IsTold).Select(l => l.Name).ToItemList(), lamps.Where(l => !IsTold(l)).Select(l => l.Name).ToItemList());
    }
}
