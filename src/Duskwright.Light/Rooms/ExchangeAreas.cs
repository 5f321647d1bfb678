using System.Collections.Immutable;

namespace Duskwright.Light.Rooms;

/// <summary>Exchange areas A·F of all pairs of patches of a room: symmetric, and each row sums to its patch's area.</summary>
internal static class ExchangeAreas
{
    /// <summary>Works them out.</summary>
    /// <param name="exchange">Takes them row by row, patches × patches, m²; what is beyond is left alone.</param>
    /// <param name="box">The room.</param>
    /// <param name="grids">Its faces cut into patches.</param>
    /// <param name="patches">Number of patches.</param>
    internal static void Fill(double[] exchange, RoomBox box, ImmutableArray<FaceGrid> grids, int patches)
    {
        Array.Clear(exchange, 0, patches * patches);
        for (var one = 0; one < grids.Length; one++)
        {
            for (var other = one + 1; other < grids.Length; other++)
            {
                FillPair(exchange, patches, box, grids[one], grids[other]);
            }
        }
    }

    // Facing rectangles are set apart along two shared axes; those at right angles along one, and each by its distance from the line where the planes meet.
    private static void FillPair(double[] exchange, int patches, RoomBox box, FaceGrid one, FaceGrid other)
    {
        var (oneNormal, otherNormal) = (one.Face.Normal(), other.Face.Normal());
        var facing = oneNormal == otherNormal;
        var shared = facing ? one.Face.Across() : 3 - oneNormal - otherNormal;
        var first = Distances.Between(one.Lines(shared), other.Lines(shared));
        var along = Spans.Of((i, k) => first[i, k], one.Lines(shared).Length, other.Lines(shared).Length);
        var (apart, corners) = facing ? Facing(box.Size(oneNormal), first, one, other) : Meeting(first, Away(one, otherNormal, other, box), Away(other, oneNormal, one, box));
        var areas = Areas(along, apart, corners, corners.Length / first.Values.Length);
        var (acrossOne, acrossOther, ways) = (one.Face.Across() == shared, other.Face.Across() == shared, apart.Ways.Length);
        for (var a = 0; a < one.Count; a++)
        {
            var (row, column) = Math.DivRem(a, one.Columns);
            var (onShared, onRest) = acrossOne ? (column, row) : (row, column);
            var (mine, b) = ((one.First + a) * patches, other.First);
            for (var l = 0; l < other.Rows; l++)
            {
                for (var k = 0; k < other.Columns; k++, b++)
                {
                    var (itsShared, itsRest) = acrossOther ? (k, l) : (l, k);
                    exchange[mine + b] = exchange[(b * patches) + one.First + a] = areas[(along[onShared, itsShared] * ways) + apart[onRest, itsRest]];
                }
            }
        }
    }

    // How far each line of a face is from the line where it meets another's plane.
    private static double[] Away(FaceGrid face, int normal, FaceGrid other, RoomBox box)
    {
        var at = other.Face.IsFar() ? box.Size(normal) : 0;
        return [.. face.Lines(normal).Select(line => Math.Abs(line - at))];
    }

    private static (Spans Apart, double[] Corners) Facing(double gap, Distances first, FaceGrid one, FaceGrid other)
    {
        var second = Distances.Between(one.Along, other.Along);
        var (corners, at) = (new double[first.Values.Length * second.Values.Length], 0);
        foreach (var a in first.Values)
        {
            foreach (var b in second.Values)
            {
                corners[at++] = ViewFactors.ParallelCorner(a, b, gap);
            }
        }

        return (Spans.Of((j, l) => second[j, l], one.Along.Length, other.Along.Length), corners);
    }

    private static (Spans Apart, double[] Corners) Meeting(Distances first, double[] own, double[] its)
    {
        var (corners, at) = (new double[first.Values.Length * own.Length * its.Length], 0);
        foreach (var a in first.Values)
        {
            foreach (var b in own)
            {
                foreach (var c in its)
                {
                    corners[at++] = ViewFactors.PerpendicularCorner(b, c, a);
                }
            }
        }

        return (Spans.Of((j, l) => (j * its.Length) + l, own.Length, its.Length), corners);
    }

    // The corner function is worked out once for each distance that differs; an exchange area is its alternating sum over the 16 pairs of corners, likewise once for each way two patches lie that differs.
    private static double[] Areas(Spans along, Spans apart, double[] corners, int seconds)
    {
        var (areas, edge, at) = (new double[along.Ways.Length * apart.Ways.Length], new double[seconds], 0);
        foreach (var (near, one, other, far) in along.Ways)
        {
            for (var b = 0; b < seconds; b++)
            {
                edge[b] = corners[(near * seconds) + b] - corners[(one * seconds) + b] - corners[(other * seconds) + b] + corners[(far * seconds) + b];
            }

            foreach (var way in apart.Ways)
            {
                // Distances from the meeting line fall with the line's number on far faces, which turns the sign.
                areas[at++] = Math.Abs(edge[way.Near] - edge[way.One] - edge[way.Other] + edge[way.Far]);
            }
        }

        return areas;
    }
}
