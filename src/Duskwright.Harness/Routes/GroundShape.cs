using NetTopologySuite.Geometries;

namespace Duskwright.Harness.Routes;

/// <summary>A closed outline on the board as the geometry library takes it.</summary>
internal static class GroundShape
{
    private static readonly GeometryFactory Factory = new();

    /// <summary>The ground within an outline.</summary>
    /// <param name="corners">Three corners or more, m, without repeat of the first.</param>
    internal static Polygon Of(IReadOnlyList<PlanePoint> corners) => Factory.CreatePolygon([.. corners.Append(corners[0]).Select(p => new Coordinate(p.X, p.Y))]);
}
