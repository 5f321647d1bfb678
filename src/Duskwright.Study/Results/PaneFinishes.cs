using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Figures;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>A pane as it is, and as it would be with its room black throughout or white inside: black hides what is in the room and costs light.</summary>
/// <param name="Pane">The pane as it is.</param>
/// <param name="Black">Mean luminance with a room painted black throughout, cd/m².</param>
/// <param name="White">Mean luminance with a room painted white inside, cd/m².</param>
/// <param name="Left">Light that is left in black, as a share of that in white.</param>
public sealed record PaneFinishes(PaneResult Pane, Figure Black, Figure White, Figure Left)
{
    internal static ItemList<PaneFinishes> Of(ResolvedTown resolved, CircuitResults circuits, ItemList<BuildingResult> results, string building, Memo memo)
    {
        var index = results.ToList().FindIndex(b => b.Building.Key == building);
        if (index < 0)
        {
            return [];
        }

        var black = PaneResults.As(InteriorFinish.Black, resolved.Buildings[index], circuits, memo);
        var white = PaneResults.As(InteriorFinish.White, resolved.Buildings[index], circuits, memo);
        return results[index].Panes
            .Select((pane, i) => new PaneFinishes(pane, black[i].Luminance, white[i].Luminance, Figure.From(Laws.Ratio, "light left in black", "share", black[i].Luminance, white[i].Luminance)))
            .ToItemList();
    }
}
