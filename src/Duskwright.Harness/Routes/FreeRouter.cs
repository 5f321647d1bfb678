using System.Collections.Immutable;

namespace Duskwright.Harness.Routes;

/// <summary>Shortest runs through a free area: the visibility graph of its corners, searched by Dijkstra's method.</summary>
/// <remarks>After M. de Berg and others, Computational Geometry, chapter 15: a shortest path bends only at corners that point into the free ground. Exact but for the rounding of sums.</remarks>
public sealed class FreeRouter
{
    private readonly Sight _sight;
    private readonly PlanePoint[] _corners;
    private readonly List<(int To, double Metres)>[] _seen;

    /// <summary>Prepares an area for many runs.</summary>
    /// <param name="area">The area.</param>
    public FreeRouter(FreeArea area)
    {
        _sight = new Sight(area);
        _corners = [.. _sight.Corners().Distinct()];
        _seen = [.. _corners.Select(_ => new List<(int, double)>())];
        for (var i = 0; i < _corners.Length; i++)
        {
            for (var j = i + 1; j < _corners.Length; j++)
            {
                if (_sight.Clear(_corners[i], _corners[j]))
                {
                    var metres = _corners[i].DistanceTo(_corners[j]);
                    _seen[i].Add((j, metres));
                    _seen[j].Add((i, metres));
                }
            }
        }
    }

    /// <summary>The shortest run between two points.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    /// <returns>The run; without points where an end lies in an obstacle or is shut in.</returns>
    public FreeRun Between(PlanePoint from, PlanePoint to)
    {
        if (_sight.Clear(from, to))
        {
            return new FreeRun(from == to ? [from] : [from, to], from.DistanceTo(to));
        }

        var (metres, before) = Reached(from);
        var order = Enumerable.Range(0, _corners.Length).Where(i => double.IsFinite(metres[i])).OrderBy(i => metres[i] + _corners[i].DistanceTo(to));
        foreach (var last in order)
        {
            if (_sight.Clear(_corners[last], to))
            {
                return new FreeRun(Line(from, to, last, before), metres[last] + _corners[last].DistanceTo(to));
            }
        }

        return FreeRun.None;
    }

    /// <summary>The shortest run from a point to any of some straight pieces.</summary>
    /// <param name="from">The point.</param>
    /// <param name="pieces">Both ends of each piece; a piece may run through an obstacle, and is then reached beside it.</param>
    /// <returns>The run and the index of the piece; without points where none can be reached.</returns>
    /// <remarks>The last stretch meets its piece at a right angle, at an end of it, or where it comes out of an obstacle.</remarks>
    public (FreeRun Run, int Piece) Nearest(PlanePoint from, IReadOnlyList<(PlanePoint A, PlanePoint B)> pieces)
    {
        var (metres, before) = Reached(from);
        var places = pieces.SelectMany((p, i) => _sight.Crossings(p.A, p.B).Select(c => (Piece: i, At: c))).ToList();
        var ways = Enumerable.Range(-1, _corners.Length + 1)
            .Where(c => c < 0 || double.IsFinite(metres[c]))
            .Select(c => (Last: c, At: c < 0 ? from : _corners[c], Metres: c < 0 ? 0 : metres[c]))
            .SelectMany(c => pieces.Select((p, i) => (Piece: i, At: c.At.NearestOn(p.A, p.B))).Concat(places).Select(p => (c.Last, Corner: c.At, p.Piece, p.At, Metres: c.Metres + c.At.DistanceTo(p.At))))
            .OrderBy(w => w.Metres);
        foreach (var way in ways)
        {
            if (_sight.Clear(way.Corner, way.At))
            {
                return (new FreeRun(way.Last < 0 ? [from, way.At] : Line(from, way.At, way.Last, before), way.Metres), way.Piece);
            }
        }

        return (FreeRun.None, -1);
    }

    /// <summary>Whether a point lies where wire may be.</summary>
    /// <param name="point">The point.</param>
    /// <returns>False inside an obstacle and beyond the outline.</returns>
    public bool IsFree(PlanePoint point) => _sight.Clear(point, point);

    /// <summary>How wide the obstacles are between what two points can reach, corner to corner.</summary>
    /// <param name="one">A point.</param>
    /// <param name="other">A point that it cannot reach.</param>
    /// <returns>Metres.</returns>
    public double Gap(PlanePoint one, PlanePoint other)
    {
        var (here, there) = (Within(one), Within(other));
        return here.Min(p => there.Min(p.DistanceTo));
    }

    private List<PlanePoint> Within(PlanePoint point)
    {
        var (metres, _) = Reached(point);
        return [point, .. _corners.Where((_, i) => double.IsFinite(metres[i]))];
    }

    // Dijkstra's method from a point to every corner, and the corner before each.
    private (double[] Metres, int[] Before) Reached(PlanePoint from)
    {
        var metres = _corners.Select(c => _sight.Clear(from, c) ? from.DistanceTo(c) : double.PositiveInfinity).ToArray();
        var before = Enumerable.Repeat(-1, _corners.Length).ToArray();
        var queue = new PriorityQueue<int, (double, int)>();
        for (var i = 0; i < metres.Length; i++)
        {
            if (double.IsFinite(metres[i]))
            {
                queue.Enqueue(i, (metres[i], i));
            }
        }

        while (queue.TryDequeue(out var corner, out var reached))
        {
            if (reached.Item1 > metres[corner])
            {
                continue;
            }

            foreach (var (next, length) in _seen[corner])
            {
                if (metres[corner] + length < metres[next])
                {
                    (metres[next], before[next]) = (metres[corner] + length, corner);
                    queue.Enqueue(next, (metres[next], next));
                }
            }
        }

        return (metres, before);
    }

    private ImmutableArray<PlanePoint> Line(PlanePoint from, PlanePoint to, int last, int[] before)
    {
        var points = new List<PlanePoint> { to };
        for (var corner = last; corner >= 0; corner = before[corner])
        {
            points.Add(_corners[corner]);
        }

        points.Add(from);
        points.Reverse();
        return [.. points];
    }
}
