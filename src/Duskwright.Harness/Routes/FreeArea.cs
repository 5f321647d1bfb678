using System.Collections.Immutable;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;

namespace Duskwright.Harness.Routes;

/// <summary>A place under the board where wire may lie anywhere: an outline with battens, legs and magnets in it.</summary>
/// <param name="Outline">The wall round it, m, in either sense; empty where the ground is open on all sides.</param>
/// <param name="Obstacles">What wire may touch and never cross, each a closed outline without repeat of its first point, m.</param>
public sealed record FreeArea(ImmutableArray<PlanePoint> Outline, ImmutableArray<ImmutableArray<PlanePoint>> Obstacles)
{
    /// <summary>The same with obstacles that touch or overlap made one: no wire goes between two battens that are butted together.</summary>
    /// <returns>The area; a ring of obstacles with free ground inside stays as it is.</returns>
    public FreeArea Joined()
    {
        var joined = UnaryUnionOp.Union(Obstacles.Select(o => (Geometry)GroundShape.Of(o)));
        var shapes = Enumerable.Range(0, joined?.NumGeometries ?? 0).Select(i => joined!.GetGeometryN(i)).OfType<Polygon>().ToList();
        return shapes.Exists(s => s.NumInteriorRings > 0)
            ? this
            : this with { Obstacles = [.. shapes.Select(s => s.ExteriorRing.Coordinates.SkipLast(1).Select(c => new PlanePoint(c.X, c.Y)).ToImmutableArray())] };
    }
}
