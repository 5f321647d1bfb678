using System.Collections.Immutable;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;

namespace Duskwright.Harness.Routes;

/// <summary>Whether wire pulled taut between two points of a free area crosses an obstacle. It may touch one and run along it.</summary>
internal sealed class Sight
{
    private readonly List<(Coordinate[] Loop, bool IsOutline, Envelope Box)> _loops = [];

    internal Sight(FreeArea area)
    {
        if (!area.Outline.IsEmpty)
        {
            Add(area.Outline, true);
        }

        foreach (var obstacle in area.Obstacles)
        {
            Add(obstacle, false);
        }
    }

    /// <summary>The corners taut wire can bend round: those that point into the free ground.</summary>
    internal IEnumerable<PlanePoint> Corners()
    {
        foreach (var (loop, isOutline, _) in _loops)
        {
            var sense = Math.Sign(DoubledArea(loop));
            for (var i = 0; i < loop.Length; i++)
            {
                var turn = (int)Orientation.Index(loop[(i + loop.Length - 1) % loop.Length], loop[i], loop[(i + 1) % loop.Length]);
                if (turn == (isOutline ? -sense : sense))
                {
                    yield return new PlanePoint(loop[i].X, loop[i].Y);
                }
            }
        }
    }

    // So far beside a wall a place is free whatever the rounding of sums: a micrometre.
    private const double BesideMetres = 1e-6;

    /// <summary>Where a straight piece comes out of an obstacle: a micrometre to either side of its wall.</summary>
    internal IEnumerable<PlanePoint> Crossings(PlanePoint from, PlanePoint to)
    {
        foreach (var (loop, _, _) in _loops)
        {
            for (var i = 0; i < loop.Length; i++)
            {
                var (p, q) = (loop[i], loop[(i + 1) % loop.Length]);
                var across = ((to.X - from.X) * (q.Y - p.Y)) - ((to.Y - from.Y) * (q.X - p.X));
                var along = (((p.X - from.X) * (q.Y - p.Y)) - ((p.Y - from.Y) * (q.X - p.X))) / across;
                var on = (((p.X - from.X) * (to.Y - from.Y)) - ((p.Y - from.Y) * (to.X - from.X))) / across;
                if (across != 0 && along is >= 0 and <= 1 && on is >= 0 and <= 1)
                {
                    foreach (var beside in new[] { -BesideMetres, BesideMetres })
                    {
                        var share = Math.Clamp(along + (beside / from.DistanceTo(to)), 0, 1);
                        yield return new PlanePoint(from.X + (share * (to.X - from.X)), from.Y + (share * (to.Y - from.Y)));
                    }
                }
            }
        }
    }

    internal bool Clear(PlanePoint from, PlanePoint to)
    {
        var (a, b) = (At(from), At(to));
        var stretch = new Envelope(a, b);
        foreach (var (loop, isOutline, box) in _loops)
        {
            if ((isOutline || box.Intersects(stretch)) && Crosses(a, b, loop, isOutline))
            {
                return false;
            }
        }

        return true;
    }

    // An end inside is forbidden however the rest lies. Without a proper crossing, wire can change from free to forbidden only at a corner lying on it: cut it there and test the middle of each piece.
    private static bool Crosses(Coordinate a, Coordinate b, Coordinate[] loop, bool isOutline)
    {
        var cuts = new List<double> { 0, 1 };
        var along = new List<(double From, double To)>();
        for (var i = 0; i < loop.Length; i++)
        {
            var (p, q) = (loop[i], loop[(i + 1) % loop.Length]);
            var (sideP, sideQ) = ((int)Orientation.Index(a, b, p), (int)Orientation.Index(a, b, q));
            if (sideP * sideQ > 0)
            {
                continue;
            }

            if (sideP * sideQ < 0 && (int)Orientation.Index(p, q, a) * (int)Orientation.Index(p, q, b) < 0)
            {
                return true;
            }

            if (sideP == 0 && Share(a, b, p) is > 0 and < 1 and var cut)
            {
                cuts.Add(cut);
            }

            if (sideP == 0 && sideQ == 0)
            {
                along.Add((Math.Min(Share(a, b, p), Share(a, b, q)), Math.Max(Share(a, b, p), Share(a, b, q))));
            }
        }

        if (Forbidden(a, b, 0, loop, isOutline) || Forbidden(a, b, 1, loop, isOutline))
        {
            return true;
        }

        cuts.Sort();
        for (var i = 1; i < cuts.Count; i++)
        {
            var middle = (cuts[i - 1] + cuts[i]) / 2;
            if (cuts[i] > cuts[i - 1] && !along.Any(s => s.From < middle && middle < s.To) && Forbidden(a, b, middle, loop, isOutline))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Forbidden(Coordinate a, Coordinate b, double share, Coordinate[] loop, bool isOutline)
    {
        var point = share == 0 ? a : share == 1 ? b : new Coordinate(a.X + (share * (b.X - a.X)), a.Y + (share * (b.Y - a.Y)));
        var closed = new Coordinate[loop.Length + 1];
        loop.CopyTo(closed, 0);
        closed[^1] = loop[0];
        return PointLocation.LocateInRing(point, closed) == (isOutline ? Location.Exterior : Location.Interior);
    }

    private void Add(ImmutableArray<PlanePoint> outline, bool isOutline)
    {
        Coordinate[] loop = [.. outline.Select(At)];
        _loops.Add((loop, isOutline, new Envelope(loop)));
    }

    private static double Share(Coordinate a, Coordinate b, Coordinate p) =>
        Math.Abs(b.X - a.X) >= Math.Abs(b.Y - a.Y)
            ? b.X == a.X ? double.NaN : (p.X - a.X) / (b.X - a.X)
            : (p.Y - a.Y) / (b.Y - a.Y);

    private static double DoubledArea(Coordinate[] loop) =>
        loop.Select((p, i) => (p.X * loop[(i + 1) % loop.Length].Y) - (loop[(i + 1) % loop.Length].X * p.Y)).Sum();

    private static Coordinate At(PlanePoint point) => new(point.X, point.Y);
}
