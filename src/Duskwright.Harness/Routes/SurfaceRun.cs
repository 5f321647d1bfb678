using System.Collections.Immutable;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;

namespace Duskwright.Harness.Routes;

/// <summary>Wire on top of the board from a house to its hole: how much of it is seen beside the houses that stand, and how little need be.</summary>
/// <param name="SeenMetres">What is seen of the straight run, m.</param>
/// <param name="LeastSeenMetres">What is seen of the run that shows the least, to a cell; never more than of the straight one.</param>
/// <param name="Under">The houses that run goes under, by their index.</param>
/// <remarks>The surface is cut into square cells; one under a house counts its length, one in the open <see cref="OpenOverHidden"/> times as much (<see cref="SurfaceCells"/>).</remarks>
public sealed record SurfaceRun(double SeenMetres, double LeastSeenMetres, ImmutableArray<int> Under)
{
    // A maker goes so many times farther under a house to spare a stretch in sight: common practice, no source.
    private const double OpenOverHidden = 6;

    // Half of a small wall's thickness to either side does not matter.
    private const double CellMetres = 0.005;
    private const double AroundMetres = 0.1;

    /// <summary>Looks at one run.</summary>
    /// <param name="house">Where the pair leaves the house, m.</param>
    /// <param name="hole">The hole, m.</param>
    /// <param name="grounds">What each house covers, its corners in m; one with fewer than three covers nothing.</param>
    /// <param name="noticedMetres">Where less than this is seen of the straight run no other is looked for, m.</param>
    /// <returns>What is seen.</returns>
    public static SurfaceRun Of(PlanePoint house, PlanePoint hole, IReadOnlyList<ImmutableArray<PlanePoint>> grounds, double noticedMetres = 0)
    {
        var (left, front) = (Math.Min(house.X, hole.X) - AroundMetres, Math.Min(house.Y, hole.Y) - AroundMetres);
        var (width, height) = ((int)Math.Ceiling((Math.Abs(house.X - hole.X) + (2 * AroundMetres)) / CellMetres), (int)Math.Ceiling((Math.Abs(house.Y - hole.Y) + (2 * AroundMetres)) / CellMetres));
        var here = new Envelope(left, left + (width * CellMetres), front, front + (height * CellMetres));
        var near = grounds
            .Select((g, i) => (Index: i, Ground: g.Length < 3 ? null : GroundShape.Of(g)))
            .Where(g => g.Ground is not null && g.Ground.EnvelopeInternal.Intersects(here))
            .ToList();
        var line = new LineString([new Coordinate(house.X, house.Y), new Coordinate(hole.X, hole.Y)]);
        var seen = near.Count == 0 ? line.Length : line.Difference(UnaryUnionOp.Union(near.Select(g => (Geometry)g.Ground!))).Length;
        if (seen == 0 || seen < noticedMetres)
        {
            return new SurfaceRun(seen, seen, []);
        }

        var over = Over(near.ConvertAll(g => g.Ground!), left, front, width, height);
        (int X, int Y) Cell(PlanePoint p) => ((int)((p.X - left) / CellMetres), (int)((p.Y - front) / CellMetres));
        var (cells, _) = new SurfaceCells(width, height, [.. over.Select(o => o < 0 ? OpenOverHidden : 1)]).Between(Cell(house), Cell(hole));
        var steps = cells.Zip(cells.Skip(1), (a, b) => (From: over[(a.Y * width) + a.X], To: over[(b.Y * width) + b.X], Metres: CellMetres * (a.X != b.X && a.Y != b.Y ? Math.Sqrt(2) : 1)));
        var least = steps.Sum(s => s.Metres * ((s.From < 0 ? 0.5 : 0) + (s.To < 0 ? 0.5 : 0)));
        return least < seen
            ? new SurfaceRun(seen, least, [.. cells.Select(c => over[(c.Y * width) + c.X]).Where(o => o >= 0).Distinct().Select(o => near[o].Index)])
            : new SurfaceRun(seen, seen, []);
    }

    // The first ground each cell's middle lies under, row by row; -1 in the open. Only the cells within a ground's own box are looked at.
    private static int[] Over(List<Polygon> grounds, double left, double front, int width, int height)
    {
        var over = Enumerable.Repeat(-1, width * height).ToArray();
        for (var g = grounds.Count - 1; g >= 0; g--)
        {
            var box = grounds[g].EnvelopeInternal;
            var (firstX, lastX) = (Math.Max(0, (int)((box.MinX - left) / CellMetres) - 1), Math.Min(width - 1, (int)((box.MaxX - left) / CellMetres)));
            var (firstY, lastY) = (Math.Max(0, (int)((box.MinY - front) / CellMetres) - 1), Math.Min(height - 1, (int)((box.MaxY - front) / CellMetres)));
            for (var y = firstY; y <= lastY; y++)
            {
                for (var x = firstX; x <= lastX; x++)
                {
                    var middle = new Coordinate(left + ((x + 0.5) * CellMetres), front + ((y + 0.5) * CellMetres));
                    if (SimplePointInAreaLocator.Locate(middle, grounds[g]) != Location.Exterior)
                    {
                        over[(y * width) + x] = g;
                    }
                }
            }
        }

        return over;
    }
}
