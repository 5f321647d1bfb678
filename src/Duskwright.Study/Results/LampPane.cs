using Duskwright.Light.Perception;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Figures;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>The brightest pane of a lamp's room, for which the lamp speaks.</summary>
/// <param name="Luminance">Its mean luminance at the start, cd/m²; none without a window.</param>
/// <param name="ReadsAsLitTo">Light in the room up to which it still reads as lit, lx.</param>
/// <param name="DotShows">Whether the bare lamp shows as a dot through it.</param>
internal sealed record LampPane(Figure? Luminance, Figure? ReadsAsLitTo, bool DotShows)
{
    private static readonly LampPane None = new(null, null, false);

    internal static Later<LampPane> Unlit { get; } = new(() => None);

    internal static Later<LampPane> Of(ResolvedLamp lamp, ResolvedBuilding building, Later<ItemList<PaneResult>> panes) => new(() =>
    {
        if (panes.Value.Where(p => p.Storey == lamp.Storey && p.Room == lamp.Room && p.Lamps.Any(l => l.Lamp == lamp.Name)).MaxBy(p => p.Luminance.Value) is not { } pane)
        {
            return None;
        }

        var window = building.Building.Storeys[pane.Storey].Rooms[pane.Room].Windows[pane.Window];
        return new LampPane(
            pane.Luminance,
            pane.ReadsAsLitTo,
            lamp.Aim == LampAim.AtPane && BareLamp.ShowsAsDot(PaneQuery.Sheet(window.Pane).Haze, lamp.BehindPaneMetres ?? RoomLayout.UsualBehindPane, pane.HotSpotRatio));
    });
}
