using System.Collections.Immutable;

namespace Duskwright.Harness.Routes;

/// <summary>The surface of a board as square cells, for runs on top that a house, paint or scatter hides: a seen stretch may be made dearer than a hidden one.</summary>
/// <param name="Width">Cells in a row.</param>
/// <param name="Height">Rows.</param>
/// <param name="Dearness">What a cell's length of wire counts there, row by row: 1 for hidden, more for seen, infinite for blocked.</param>
public sealed record SurfaceCells(int Width, int Height, ImmutableArray<double> Dearness)
{
    private static readonly double Diagonal = Math.Sqrt(2);

    /// <summary>The cheapest run between the middles of two cells: straight and diagonal steps, none past the corner of a blocked cell.</summary>
    /// <param name="from">Column and row of one end, from 0.</param>
    /// <param name="to">Column and row of the other end.</param>
    /// <returns>The cells in order and the length counted in cells; no cells and infinite where there is none.</returns>
    public (ImmutableArray<(int X, int Y)> Cells, double Length) Between((int X, int Y) from, (int X, int Y) to)
    {
        var length = Enumerable.Repeat(double.PositiveInfinity, Width * Height).ToArray();
        var before = new int[Width * Height];
        var (start, goal) = (Index(from.X, from.Y), Index(to.X, to.Y));
        if (double.IsInfinity(Dearness[start]) || double.IsInfinity(Dearness[goal]))
        {
            return ([], double.PositiveInfinity);
        }

        var queue = new PriorityQueue<int, (double, int)>();
        length[start] = 0;
        queue.Enqueue(start, (0, start));
        while (queue.TryDequeue(out var cell, out var reached) && cell != goal)
        {
            if (reached.Item1 > length[cell])
            {
                continue;
            }

            var (x, y) = (cell % Width, cell / Width);
            ReadOnlySpan<bool> beside = [Free(x - 1, y), true, Free(x + 1, y)];
            ReadOnlySpan<bool> beyond = [Free(x, y - 1), true, Free(x, y + 1)];
            for (var dy = -1; dy <= 1; dy++)
            {
                for (var dx = -1; dx <= 1; dx++)
                {
                    if ((dx == 0 && dy == 0) || !beside[dx + 1] || !beyond[dy + 1] || (dx != 0 && dy != 0 && !Free(x + dx, y + dy)))
                    {
                        continue;
                    }

                    var next = Index(x + dx, y + dy);
                    var reach = length[cell] + ((dx != 0 && dy != 0 ? Diagonal : 1) * (Dearness[cell] + Dearness[next]) / 2);
                    if (reach < length[next])
                    {
                        (length[next], before[next]) = (reach, cell);
                        queue.Enqueue(next, (reach, next));
                    }
                }
            }
        }

        if (double.IsInfinity(length[goal]))
        {
            return ([], double.PositiveInfinity);
        }

        var cells = new List<(int, int)>();
        for (var cell = goal; cell != start; cell = before[cell])
        {
            cells.Add((cell % Width, cell / Width));
        }

        cells.Add(from);
        cells.Reverse();
        return ([.. cells], length[goal]);
    }

    private bool Free(int x, int y) => x >= 0 && y >= 0 && x < Width && y < Height && double.IsFinite(Dearness[Index(x, y)]);

    private int Index(int x, int y) => (y * Width) + x;
}
