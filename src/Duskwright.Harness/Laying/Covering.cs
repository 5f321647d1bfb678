using System.Collections.Immutable;
using Duskwright.Harness.Routes;
using NetTopologySuite.Geometries;

namespace Duskwright.Harness.Laying;

/// <summary>Which house would cover the wire of which.</summary>
internal static class Covering
{
    // Wire that only touches a wall is not under the house: half a millimetre, the width of a pencil line.
    private const double WallMetres = 0.0005;

    /// <summary>For each house the others that cover some of its wire on the surface, by index.</summary>
    internal static ImmutableArray<ImmutableArray<int>> Of(ImmutableArray<LaidHouse> houses)
    {
        var grounds = houses.Select(Ground).ToList();
        return
        [
            .. houses.Select((house, h) => Wire(house) is { } wire
                ? [.. Enumerable.Range(0, houses.Length).Where(x => x != h && grounds[x] is { } ground && ground.Intersects(wire))]
                : ImmutableArray<int>.Empty),
        ];
    }

    private static Geometry? Ground(LaidHouse house)
    {
        if (house.Footprint.Length < 3)
        {
            return null;
        }

        var inner = GroundShape.Of(house.Footprint).Buffer(-WallMetres);
        return inner.IsEmpty ? null : inner;
    }

    private static Geometry? Wire(LaidHouse house) => house.Surface switch
    {
        [] => null,
        [var hole] => new NetTopologySuite.Geometries.Point(At(hole)),
        _ => new LineString([.. house.Surface.Select(At)]),
    };

    private static Coordinate At(PlanePoint point) => new(point.X, point.Y);
}
