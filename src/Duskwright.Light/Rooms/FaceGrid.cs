using System.Collections.Immutable;

namespace Duskwright.Light.Rooms;

/// <summary>One face of a room cut into patches by lines along both its axes; no patch lies across the edge of a pane.</summary>
/// <param name="Face">The face.</param>
/// <param name="Across">Lines on its first axis, m, rising, from 0 to its size.</param>
/// <param name="Along">Lines on its second axis, m, likewise.</param>
/// <param name="First">Number of its first patch in the room.</param>
internal sealed record FaceGrid(BoxFace Face, double[] Across, double[] Along, int First)
{
    internal int Columns => Across.Length - 1;

    internal int Rows => Along.Length - 1;

    internal int Count => Columns * Rows;

    internal int Patch(int column, int row) => First + (row * Columns) + column;

    internal Rectangle Rectangle(int patch)
    {
        var (row, column) = Math.DivRem(patch - First, Columns);
        return new(Across[column], Across[column + 1], Along[row], Along[row + 1]);
    }

    /// <summary>Its lines along one of the room's axes.</summary>
    internal double[] Lines(int axis) => axis == Face.Across() ? Across : Along;

    internal int PatchAt(double across, double along) => Patch(Interval(Across, across), Interval(Along, along));

    /// <summary>The patches of an opening, row by row from its lower near corner, with the number of columns.</summary>
    internal (ImmutableArray<int> Patches, int Columns) Of(Rectangle opening)
    {
        var (left, right) = (Interval(Across, opening.FromAcross + Hair), Interval(Across, opening.ToAcross - Hair));
        var (bottom, top) = (Interval(Along, opening.FromAlong + Hair), Interval(Along, opening.ToAlong - Hair));
        return ([.. from row in Enumerable.Range(bottom, top - bottom + 1) from column in Enumerable.Range(left, right - left + 1) select Patch(column, row)], right - left + 1);
    }

    /// <summary>Lines closer than this are one line, m.</summary>
    internal const double Hair = 1e-7;

    private static int Interval(double[] lines, double at)
    {
        var found = Array.BinarySearch(lines, at);
        return Math.Clamp(found >= 0 ? found : ~found - 1, 0, lines.Length - 2);
    }
}
