using System.Collections.Immutable;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Union;

namespace Duskwright.Harness.Routes;

/// <summary>Free areas the maker drew under the board, less the obstacles in them: there a pair may leave the wireways and lie anywhere.</summary>
internal sealed class FreeGround
{
    // A place computed on a slanting edge may lie beyond it by the rounding of sums: a micrometre covers that.
    private const double EdgeMetres = 1e-6;

    private readonly ImmutableArray<Sight> _areas;

    internal FreeGround(RouteRules rules)
    {
        Geometry Joined(IEnumerable<ImmutableArray<PlanePoint>> loops) => UnaryUnionOp.Union(loops.Select(l => (Geometry)GroundShape.Of(l))) ?? Polygon.Empty;
        var ground = Joined(rules.Free).Difference(Joined(rules.Around?.Obstacles ?? []));
        var shapes = Polygons(ground).ToList();
        Edges = [.. shapes.SelectMany(Rings).SelectMany(r => r.Zip(r.Skip(1).Append(r[0])))];
        var widened = new BufferParameters { JoinStyle = JoinStyle.Mitre };
        _areas = [.. shapes.SelectMany(s => Polygons(s.Buffer(EdgeMetres, widened))).Select(s => Rings(s).ToList()).Select(r => new Sight(new FreeArea(r[0], [.. r.Skip(1)])))];
    }

    /// <summary>Both ends of each edge of the areas and of what is left out of them.</summary>
    internal ImmutableArray<(PlanePoint From, PlanePoint To)> Edges { get; }

    /// <summary>Whether a point lies in a free area.</summary>
    internal bool Holds(PlanePoint point) => _areas.Any(a => a.Clear(point, point));

    /// <summary>Pairs of points between which wire may be pulled taut within one area.</summary>
    internal IEnumerable<(int From, int To)> Seen(IReadOnlyList<PlanePoint> points)
    {
        foreach (var area in _areas)
        {
            var within = Enumerable.Range(0, points.Count).Where(i => area.Clear(points[i], points[i])).ToList();
            foreach (var (from, at) in within.Select((n, i) => (n, i)))
            {
                foreach (var to in within.Skip(at + 1).Where(to => area.Clear(points[from], points[to])))
                {
                    yield return (from, to);
                }
            }
        }
    }

    private static IEnumerable<Polygon> Polygons(Geometry shape) => Enumerable.Range(0, shape.NumGeometries).Select(shape.GetGeometryN).OfType<Polygon>().Where(p => !p.IsEmpty);

    private static IEnumerable<ImmutableArray<PlanePoint>> Rings(Polygon shape) => shape.InteriorRings.Prepend(shape.ExteriorRing)
        .Select(r => r.Coordinates.SkipLast(1).Select(c => new PlanePoint(c.X, c.Y)).ToImmutableArray());
}
