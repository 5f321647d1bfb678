using Duskwright.Plan;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>What is seen through one pane from where people stand.</summary>
public sealed record PaneSight
{
    /// <summary>The building it is in.</summary>
    public required string Building { get; init; }

    /// <summary>Which of the building's storeys, from 0.</summary>
    public required int Storey { get; init; }

    /// <summary>Which of the storey's rooms, from 0.</summary>
    public required int Room { get; init; }

    /// <summary>Which of the room's windows, from 0.</summary>
    public required int Window { get; init; }

    /// <summary>From where it is seen: viewing positions, the same at a child's height, or straight before it where none is described or the building is not placed.</summary>
    public required ItemList<string> From { get; init; }

    /// <summary>Whether one sees into the room: a clear pane or an open doorway.</summary>
    public required bool SeenThrough { get; init; }

    /// <summary>Whether nothing stands in the opening that could be frosted.</summary>
    public required bool Open { get; init; }

    /// <summary>Lamps of its room in somebody's line of sight that show: bare, or by their back with solder and wire.</summary>
    public required ItemList<LampSight> Lamps { get; init; }

    /// <summary>Brightness of bare solder and leads over that of the wall behind; from 3 on they are made out. None where one does not see in.</summary>
    public Figure? MetalOverWall { get; init; }

    /// <summary>Brightness of an unpainted card edge over that of the wall behind; none where one does not see in.</summary>
    public Figure? EdgeOverWall { get; init; }

    /// <summary>Coats of frosting after which nobody sees into the room; 0 where nobody does.</summary>
    public required int CoatsToClose { get; init; }

    /// <summary>Light that is left after those coats, as a share.</summary>
    public required Figure LightAfterCoats { get; init; }
}

/// <summary>A lamp in the line of sight through a pane.</summary>
/// <param name="Lamp">Its name.</param>
/// <param name="From">From where.</param>
/// <param name="Glare">Its bare face over the mean of the pane; none where only its back shows.</param>
/// <param name="Move">The shortest move that hides it from everybody; none where no move along one wall does.</param>
/// <param name="Coats">Coats of frosting after which its face no longer stands out; none where more than four, or where only its back shows.</param>
public sealed record LampSight(string Lamp, ItemList<string> From, Figure? Glare, LampMove? Move, int? Coats);

/// <summary>A move of a lamp.</summary>
/// <param name="Millimetres">How far, whole mm.</param>
/// <param name="Way">Where to: "up", "to the back".</param>
public sealed record LampMove(int Millimetres, string Way);
