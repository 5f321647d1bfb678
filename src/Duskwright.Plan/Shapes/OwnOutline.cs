using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Shapes;

/// <summary>A building's ground given by its own corners: put, moved, added and taken away where they lie on the board.</summary>
/// <remarks>The place stays the middle of the box about the corners, and width and depth are the sides of that box, along which the walls are drawn.</remarks>
public static class OwnOutline
{
    private const double UsualSide = 60;

    /// <summary>A rectangular or round ground as one of its own four corners.</summary>
    /// <param name="place">The place.</param>
    /// <returns>The same ground by its corners; the place itself where it has some already.</returns>
    public static Placement Of(Placement place)
    {
        if (place.Outline.Count > 0)
        {
            return place;
        }

        var (w, d) = ((place.Width?.Millimetres ?? UsualSide) / 2, ((place.Round ? place.Width : place.Depth ?? place.Width)?.Millimetres ?? UsualSide) / 2);
        return place with
        {
            Round = false,
            Width = Length.FromMillimetres(2 * w),
            Depth = Length.FromMillimetres(2 * d),
            Outline = [Point.At(-w, -d), Point.At(w, -d), Point.At(w, d), Point.At(-w, d)],
        };
    }

    /// <summary>Where the corners lie on the board.</summary>
    /// <param name="place">A place with an outline.</param>
    /// <returns>The corners in order; none where it has no outline.</returns>
    public static ItemList<Point> Corners(Placement place)
    {
        var (sin, cos) = Math.SinCos(place.Rotation.Radians);
        return place.Outline.Select(p => Point.At(
            place.At.X.Millimetres + (p.X.Millimetres * cos) - (p.Y.Millimetres * sin),
            place.At.Y.Millimetres + (p.X.Millimetres * sin) + (p.Y.Millimetres * cos))).ToItemList();
    }

    /// <summary>The ground with its corners elsewhere.</summary>
    /// <param name="place">The place; how far it is turned is kept.</param>
    /// <param name="corners">The corners on the board, in order; one at least.</param>
    /// <returns>The place.</returns>
    public static Placement With(Placement place, ItemList<Point> corners)
    {
        var (sin, cos) = Math.SinCos(place.Rotation.Radians);
        var plain = corners.Select(p => (X: (p.X.Millimetres * cos) + (p.Y.Millimetres * sin), Y: (p.Y.Millimetres * cos) - (p.X.Millimetres * sin))).ToList();
        var (left, right, front, back) = (plain.Min(p => p.X), plain.Max(p => p.X), plain.Min(p => p.Y), plain.Max(p => p.Y));
        var (x, y) = ((left + right) / 2, (front + back) / 2);
        return place with
        {
            At = Rounded((x * cos) - (y * sin), (x * sin) + (y * cos)),
            Width = Length.FromMillimetres(Fine(right - left)),
            Depth = Length.FromMillimetres(Fine(back - front)),
            Outline = plain.Select(p => Rounded(p.X - x, p.Y - y)).ToItemList(),
        };
    }

    /// <summary>One corner more, in the middle of the longest side.</summary>
    /// <param name="place">A place with an outline.</param>
    /// <returns>The place; as it was where it has no outline.</returns>
    public static Placement OneMore(Placement place)
    {
        if (place.Outline.Count < 2)
        {
            return place;
        }

        var corners = Corners(place);
        var (a, at, b) = corners.Select((p, i) => (p, i, corners[(i + 1) % corners.Count])).MaxBy(s => Math.Pow(s.Item3.X.Millimetres - s.p.X.Millimetres, 2) + Math.Pow(s.Item3.Y.Millimetres - s.p.Y.Millimetres, 2));
        var middle = Point.At((a.X.Millimetres + b.X.Millimetres) / 2, (a.Y.Millimetres + b.Y.Millimetres) / 2);
        return With(place, corners.Take(at + 1).Append(middle).Concat(corners.Skip(at + 1)).ToItemList());
    }

    private static Point Rounded(double x, double y) => Point.At(Fine(x), Fine(y));

    // A hundredth of a millimetre is finer than any saw.
    private static double Fine(double millimetres) => Math.Round(millimetres, 2);
}
