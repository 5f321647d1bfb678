using System.Collections.Immutable;

namespace Duskwright.Light.Rooms;

/// <summary>A room with the lamps in it and the panes in its walls.</summary>
public sealed record LitRoom
{
    /// <summary>Puts a room together.</summary>
    /// <param name="box">The room.</param>
    /// <param name="lamps">Its lamps.</param>
    /// <param name="panes">Its panes.</param>
    /// <exception cref="ArgumentOutOfRangeException">A lamp is not inside the room, a pane not inside its wall, or a pane passes and throws back more than it gets.</exception>
    public LitRoom(RoomBox box, ImmutableArray<RoomLamp> lamps, ImmutableArray<RoomPane> panes)
    {
        ArgumentNullException.ThrowIfNull(box);
        foreach (var lamp in lamps)
        {
            for (var axis = 0; axis < 3; axis++)
            {
                if (!(lamp.At[axis] > 0 && lamp.At[axis] < box.Size(axis)))
                {
                    throw new ArgumentOutOfRangeException(nameof(lamps), lamp.At, $"A lamp must be inside the room of {box.WidthMetres} × {box.DepthMetres} × {box.HeightMetres} m.");
                }
            }
        }

        foreach (var pane in panes)
        {
            var (opening, wide, high) = (pane.Opening, box.Size(pane.Wall.Across()), box.Size(pane.Wall.Along()));
            if (!(opening.FromAcross >= 0 && opening.FromAcross < opening.ToAcross && opening.ToAcross <= wide + FaceGrid.Hair
                && opening.FromAlong >= 0 && opening.FromAlong < opening.ToAlong && opening.ToAlong <= high + FaceGrid.Hair))
            {
                throw new ArgumentOutOfRangeException(nameof(panes), opening, $"A pane must be inside its wall of {wide} × {high} m.");
            }

            if (!(pane.Sheet is { Transmittance: >= 0, Haze: >= 0 and <= 1, Reflectance: >= 0 } && pane.Sheet.Transmittance + pane.Sheet.Reflectance <= 1))
            {
                throw new ArgumentOutOfRangeException(nameof(panes), pane.Sheet, "A pane cannot pass and throw back more light than falls on it.");
            }
        }

        (Box, Lamps, Panes) = (box, lamps, panes);
    }

    /// <summary>The room.</summary>
    public RoomBox Box { get; }

    /// <summary>Its lamps.</summary>
    public ImmutableArray<RoomLamp> Lamps { get; }

    /// <summary>Its panes.</summary>
    public ImmutableArray<RoomPane> Panes { get; }
}
