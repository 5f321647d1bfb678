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

        var (best, last) = (double.PositiveInfinity, -1);
        while (queue.TryDequeue(out var corner, out var reached) && reached.Item1 < best)
        {
            if (reached.Item1 > metres[corner])
            {
                continue;
            }

            var whole = metres[corner] + _corners[corner].DistanceTo(to);
            if (whole < best && _sight.Clear(_corners[corner], to))
            {
                (best, last) = (whole, corner);
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

        return last < 0 ? FreeRun.None : new FreeRun(Line(from, to, last, before), best);
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
