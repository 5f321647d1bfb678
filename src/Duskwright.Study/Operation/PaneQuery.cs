using Duskwright.Light.Lamps;
using Duskwright.Light.Rooms;
using Duskwright.Light.Surfaces;
using Duskwright.Plan;
using Duskwright.Plan.Document;

namespace Duskwright.Study.Operation;

/// <summary>What a room's light is computed from. Currents are no part of it: light is additive, so a room is solved once for one candela of each lamp.</summary>
internal sealed record PaneQuery(
    double WidthMetres, double DepthMetres, double HeightMetres, InteriorFinish Finish, ItemList<PanePlace> Panes, ItemList<LampSpot> Lamps)
{
    internal double Reflectance => Finish switch
    {
        InteriorFinish.Black => Finishes.Black,
        InteriorFinish.White => Finishes.White,
        InteriorFinish.Foil => Finishes.Foil,
        _ => Finishes.Raw,
    };

    internal RoomTransfer Answer() => RoomTransfer.Of(Room(), RoomMesh.Usual);

    /// <summary>The room with one candela of each lamp.</summary>
    internal LitRoom Room() => new(
        new RoomBox(WidthMetres, DepthMetres, HeightMetres, Reflectance),
        [.. Lamps.Select(l => new RoomLamp(new LampLobe(1, l.AngleRadians), l.At, l.Axis))],
        [.. Panes.Select(p => new RoomPane(p.Wall, p.Opening, Sheet(p.Pane)))]);

    internal static Glazing Sheet(Pane? pane)
    {
        var sheet = pane?.Material switch
        {
            PaneMaterial.Frosted => PaneSheets.Frosted,
            PaneMaterial.Tracing => PaneSheets.Tracing,
            PaneMaterial.Open => PaneSheets.Open,
            _ => PaneSheets.Clear,
        };
        return pane is { Bars: true } ? PaneSheets.WithBars(sheet) : sheet;
    }
}

/// <summary>A pane where it lies in its room's wall.</summary>
internal sealed record PanePlace(BoxFace Wall, Rectangle Opening, Pane? Pane);

/// <summary>A lamp where it stands and points in its room.</summary>
internal sealed record LampSpot(RoomPoint At, RoomPoint Axis, double AngleRadians);
