using Duskwright.Light.Rooms;

namespace Duskwright.Light.Sight;

/// <summary>Where a lamp is out of everybody's sight.</summary>
public static class HidingPlace
{
    private const double Step = 0.001;

    // A lamp's middle keeps this far off walls, floor and ceiling.
    private const double Off = 0.002;

    /// <summary>The shortest move along one edge of the room after which no eye sees the lamp, in whole millimetres.</summary>
    /// <param name="box">The room.</param>
    /// <param name="lamp">Where the lamp is.</param>
    /// <param name="radiusMetres">Its radius, m.</param>
    /// <param name="looks">Each pane with each eye that looks into it.</param>
    /// <returns>The move; none where no such move hides it.</returns>
    public static RoomPoint? Nearest(RoomBox box, RoomPoint lamp, double radiusMetres, IReadOnlyList<(RoomPane Pane, RoomPoint Eye)> looks)
    {
        ArgumentNullException.ThrowIfNull(box);
        ArgumentNullException.ThrowIfNull(looks);
        var steps = (int)(Math.Max(box.WidthMetres, Math.Max(box.DepthMetres, box.HeightMetres)) / Step);
        for (var i = 1; i <= steps; i++)
        {
            var far = i * Step;

            // Up first: a lamp under the ceiling also lights its room most evenly.
            foreach (var move in (ReadOnlySpan<RoomPoint>)[new(0, 0, far), new(far, 0, 0), new(-far, 0, 0), new(0, far, 0), new(0, -far, 0), new(0, 0, -far)])
            {
                var at = lamp + move;
                if (Inside(box, at) && looks.All(l => !SightLine.Passes(box, l.Pane, l.Eye, at, radiusMetres)))
                {
                    return move;
                }
            }
        }

        return null;
    }

    private static bool Inside(RoomBox box, RoomPoint at) =>
        at.X >= Off && at.X <= box.WidthMetres - Off && at.Y >= Off && at.Y <= box.DepthMetres - Off && at.Z >= Off && at.Z <= box.HeightMetres - Off;
}
