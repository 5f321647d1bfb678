using Duskwright.Plan.Document;

namespace Duskwright.Plan.Checks;

/// <summary>Geometry of outlines.</summary>
internal static class Outline
{
    /// <summary>Whether two sides that are not neighbours cross or touch.</summary>
    internal static bool CrossesItself(ItemList<Point> points)
    {
        var n = points.Count;
        for (var i = 0; i < n; i++)
        {
            for (var j = i + 2; j < n; j++)
            {
                if ((j + 1) % n != i && Crosses(points[i], points[i + 1], points[j], points[(j + 1) % n]))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>The corners of a footprint on the board, turned and moved; none where its size is not known.</summary>
    internal static IEnumerable<Point> Corners(Placement place)
    {
        var turn = place.Rotation.Radians;
        var (cos, sin) = (Math.Cos(turn), Math.Sin(turn));
        return Plain(place).Select(p => Point.At(
            place.At.X.Millimetres + (p.X * cos) - (p.Y * sin),
            place.At.Y.Millimetres + (p.X * sin) + (p.Y * cos)));
    }

    private static IEnumerable<(double X, double Y)> Plain(Placement place)
    {
        if (place.Outline.Count > 0)
        {
            return place.Outline.Select(p => (p.X.Millimetres, p.Y.Millimetres));
        }

        if (place.Width is not { } width)
        {
            return [(0, 0)];
        }

        var (w, d) = (width.Millimetres / 2, (place.Depth ?? width).Millimetres / 2);
        return place.Round ? [(w, 0), (0, w), (-w, 0), (0, -w)] : [(-w, -d), (w, -d), (w, d), (-w, d)];
    }

    private static bool Crosses(Point a, Point b, Point c, Point d) =>
        Side(a, b, c) * Side(a, b, d) <= 0 && Side(c, d, a) * Side(c, d, b) <= 0;

    private static double Side(Point from, Point to, Point p) =>
        ((to.X.Millimetres - from.X.Millimetres) * (p.Y.Millimetres - from.Y.Millimetres))
        - ((to.Y.Millimetres - from.Y.Millimetres) * (p.X.Millimetres - from.X.Millimetres));
}
