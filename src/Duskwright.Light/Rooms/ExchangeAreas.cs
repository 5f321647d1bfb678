using System.Collections.Immutable;

namespace Duskwright.Light.Rooms;

/// <summary>Exchange areas A·F of all pairs of patches of a room: symmetric, and each row sums to its patch's area.</summary>
internal static class ExchangeAreas
{
    /// <summary>Works them out.</summary>
    /// <param name="box">The room.</param>
    /// <param name="grids">Its faces cut into patches.</param>
    /// <param name="patches">Number of patches.</param>
    /// <returns>Row by row, patches × patches, m².</returns>
    internal static double[] Of(RoomBox box, ImmutableArray<FaceGrid> grids, int patches)
    {
        var exchange = new double[patches * patches];
        for (var one = 0; one < grids.Length; one++)
        {
            for (var other = one + 1; other < grids.Length; other++)
            {
                Fill(exchange, patches, box, grids[one], grids[other]);
            }
        }

        return exchange;
    }

    private static void Fill(double[] exchange, int patches, RoomBox box, FaceGrid one, FaceGrid other)
    {
        // The corner function is worked out once at every pair of crossings; each pair of patches is its alternating sum over 16 of them.
        var corners = Corners(box, one, other);
        var (oneColumns, otherColumns, otherRows) = (one.Columns + 1, other.Columns + 1, other.Rows + 1);
        var otherNodes = otherColumns * otherRows;
        for (var j = 0; j < one.Rows; j++)
        {
            for (var i = 0; i < one.Columns; i++)
            {
                var a = one.Patch(i, j);
                var node = ((j * oneColumns) + i) * otherNodes;
                var (right, up) = (otherNodes, oneColumns * otherNodes);
                for (var l = 0; l < other.Rows; l++)
                {
                    for (var k = 0; k < other.Columns; k++)
                    {
                        var b = other.Patch(k, l);
                        var at = node + (l * otherColumns) + k;
                        var sum = Square(corners, at, otherColumns) - Square(corners, at + right, otherColumns)
                            - Square(corners, at + up, otherColumns) + Square(corners, at + right + up, otherColumns);

                        // Distances from the meeting line fall with the line's number on far faces, which turns the sign.
                        exchange[(a * patches) + b] = exchange[(b * patches) + a] = Math.Abs(sum);
                    }
                }
            }
        }
    }

    private static double Square(double[] corners, int at, int columns) =>
        corners[at] - corners[at + 1] - corners[at + columns] + corners[at + columns + 1];

    private static double[] Corners(RoomBox box, FaceGrid one, FaceGrid other)
    {
        // Lines are mostly evenly spaced, so few of their distances differ: the corner function is worked out once for each combination that does.
        var (oneNormal, otherNormal) = (one.Face.Normal(), other.Face.Normal());
        var facing = oneNormal == otherNormal;
        var first = facing ? Distances.Between(one.Across, other.Across) : Distances.Between(one.Lines(3 - oneNormal - otherNormal), other.Lines(3 - oneNormal - otherNormal));
        var second = facing ? Distances.Between(one.Along, other.Along) : Distances.Between(one.Lines(otherNormal), [other.Face.IsFar() ? box.Size(otherNormal) : 0]);
        var third = facing ? Distances.Between([0], [box.Size(oneNormal)]) : Distances.Between(other.Lines(oneNormal), [one.Face.IsFar() ? box.Size(oneNormal) : 0]);
        var values = new double[first.Values.Length * second.Values.Length * third.Values.Length];
        var at = 0;
        foreach (var a in first.Values)
        {
            foreach (var b in second.Values)
            {
                foreach (var c in third.Values)
                {
                    values[at++] = facing ? ViewFactors.ParallelCorner(a, b, c) : ViewFactors.PerpendicularCorner(b, c, a);
                }
            }
        }

        var sharedIsAcross = !facing && one.Face.Across() == 3 - oneNormal - otherNormal;
        var otherSharedIsAcross = !facing && other.Face.Across() == 3 - oneNormal - otherNormal;
        var corners = new double[one.Across.Length * one.Along.Length * other.Across.Length * other.Along.Length];
        at = 0;
        for (var j = 0; j < one.Along.Length; j++)
        {
            for (var i = 0; i < one.Across.Length; i++)
            {
                for (var l = 0; l < other.Along.Length; l++)
                {
                    for (var k = 0; k < other.Across.Length; k++)
                    {
                        var (a, b, c) = facing
                            ? (first[i, k], second[j, l], 0)
                            : (first[sharedIsAcross ? i : j, otherSharedIsAcross ? k : l], second[sharedIsAcross ? j : i, 0], third[otherSharedIsAcross ? l : k, 0]);
                        corners[at++] = values[(((a * second.Values.Length) + b) * third.Values.Length) + c];
                    }
                }
            }
        }

        return corners;
    }
}
