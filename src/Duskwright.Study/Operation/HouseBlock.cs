using Duskwright.Light.Rooms;
using Duskwright.Plan.Document;

namespace Duskwright.Study.Operation;

/// <summary>A house as a block that stops lines of sight, up to half its roof.</summary>
/// <param name="building">The house, placed and of known width.</param>
/// <param name="bottom">Its ground above the lowest level, m.</param>
/// <param name="top">Its top, likewise.</param>
internal sealed class HouseBlock(Building building, double bottom, double top)
{
    private readonly double _halfWidth = building.Place!.Width!.Value.Metres / 2;
    private readonly double _halfDepth = (building.Place.Depth ?? building.Place.Width).Value.Metres / 2;

    internal Building Building { get; } = building;

    /// <summary>From the board's axes to those about the middle of a house, x along its front.</summary>
    internal static RoomPoint Turned(Placement place, RoomPoint at)
    {
        var (sin, cos) = Math.SinCos(place.Rotation.Radians);
        var (x, y) = (at.X - place.At.X.Metres, at.Y - place.At.Y.Metres);
        return new((cos * x) + (sin * y), (cos * y) - (sin * x), at.Z);
    }

    /// <summary>From the axes about the middle of a house to the board's.</summary>
    internal static RoomPoint Back(Placement place, RoomPoint at)
    {
        var (sin, cos) = Math.SinCos(place.Rotation.Radians);
        return new((cos * at.X) - (sin * at.Y) + place.At.X.Metres, (sin * at.X) + (cos * at.Y) + place.At.Y.Metres, at.Z);
    }

    /// <summary>Whether the house stands between two points of the board.</summary>
    internal bool Stops(RoomPoint from, RoomPoint to)
    {
        var (a, b) = (Turned(Building.Place!, from), Turned(Building.Place!, to));
        var (enters, leaves) = (0.0, 1.0);
        foreach (var (start, end, low, high) in (ReadOnlySpan<(double, double, double, double)>)[(a.X, b.X, -_halfWidth, _halfWidth), (a.Y, b.Y, -_halfDepth, _halfDepth), (a.Z, b.Z, bottom, top)])
        {
            if (start == end)
            {
                if (start < low || start > high)
                {
                    return false;
                }

                continue;
            }

            var (one, other) = ((low - start) / (end - start), (high - start) / (end - start));
            enters = Math.Max(enters, Math.Min(one, other));
            leaves = Math.Min(leaves, Math.Max(one, other));
        }

        return enters < leaves;
    }
}
