using Duskwright.Light.Rooms;

namespace Duskwright.Light.Sight;

/// <summary>Straight lines from an eye outside, through a pane, into a room.</summary>
public static class SightLine
{
    /// <summary>Whether an eye before a wall sees into a pane of it at all, not more than 80° from square on: beyond, the wall's own thickness hides the room (common practice, no source).</summary>
    /// <param name="box">The room.</param>
    /// <param name="pane">The pane.</param>
    /// <param name="eye">The eye, in the room's axes, m.</param>
    /// <returns>True where it does.</returns>
    public static bool Faces(RoomBox box, RoomPane pane, RoomPoint eye)
    {
        ArgumentNullException.ThrowIfNull(box);
        ArgumentNullException.ThrowIfNull(pane);
        var ray = eye - Middle(box, pane);
        return Outside(box, pane.Wall, eye) > Math.Cos(SteepestRadians) * ray.Length;
    }

    /// <summary>Whether the line from an eye to a round thing in the room passes a pane's opening.</summary>
    /// <param name="box">The room.</param>
    /// <param name="pane">The pane.</param>
    /// <param name="eye">The eye, in the room's axes, m.</param>
    /// <param name="thing">The middle of the thing, inside the room, m.</param>
    /// <param name="radiusMetres">Its radius; a part of it in sight is enough.</param>
    /// <returns>True where it does; never for an eye that is not before the pane.</returns>
    public static bool Passes(RoomBox box, RoomPane pane, RoomPoint eye, RoomPoint thing, double radiusMetres)
    {
        if (!Faces(box, pane, eye))
        {
            return false;
        }

        var (outside, inside) = (Outside(box, pane.Wall, eye), -Outside(box, pane.Wall, thing));
        var crossing = eye + (outside / (outside + inside) * (thing - eye));

        // Seen from the eye, the thing's radius shrinks to this where the line crosses the pane.
        var margin = radiusMetres * outside / (outside + inside);
        var (across, along) = (crossing[pane.Wall.Across()], crossing[pane.Wall.Along()]);
        return across > pane.Opening.FromAcross - margin && across < pane.Opening.ToAcross + margin
            && along > pane.Opening.FromAlong - margin && along < pane.Opening.ToAlong + margin;
    }

    /// <summary>The middle of a pane in the room's axes.</summary>
    /// <param name="box">The room.</param>
    /// <param name="pane">The pane.</param>
    /// <returns>The point, m.</returns>
    public static RoomPoint Middle(RoomBox box, RoomPane pane)
    {
        ArgumentNullException.ThrowIfNull(pane);
        return RoomPoint.Of(pane.Wall, box, (pane.Opening.FromAcross + pane.Opening.ToAcross) / 2, (pane.Opening.FromAlong + pane.Opening.ToAlong) / 2);
    }

    private const double SteepestRadians = 80 * Math.PI / 180;

    // How far a point lies before the wall's plane, less than zero inside.
    private static double Outside(RoomBox box, BoxFace wall, RoomPoint point) =>
        wall.IsFar() ? point[wall.Normal()] - box.Size(wall.Normal()) : -point[wall.Normal()];
}
