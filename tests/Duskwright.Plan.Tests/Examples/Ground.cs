using Duskwright.Plan.Document;

namespace Duskwright.Plan.Tests.Examples;

/// <summary>Plane geometry of footprints, in mm, apart from what the program uses.</summary>
internal static class Ground
{
    internal static (double X, double Y)[] Corners(Placement place)
    {
        var (cos, sin) = (Math.Cos(place.Rotation.Radians), Math.Sin(place.Rotation.Radians));
        var (w, d) = ((place.Width?.Millimetres ?? 0) / 2, (place.Depth ?? place.Width)?.Millimetres / 2 ?? 0);
        (double X, double Y)[] plain = place.Outline.Count > 0
            ? [.. place.Outline.Select(p => (p.X.Millimetres, p.Y.Millimetres))]
            : [(-w, -d), (w, -d), (w, d), (-w, d)];
        return [.. plain.Select(p => (place.At.X.Millimetres + (p.X * cos) - (p.Y * sin), place.At.Y.Millimetres + (p.X * sin) + (p.Y * cos)))];
    }

    /// <summary>Even-odd rule.</summary>
    internal static bool Inside((double X, double Y)[] outline, (double X, double Y) p)
    {
        var inside = false;
        for (int i = 0, j = outline.Length - 1; i < outline.Length; j = i++)
        {
            var (a, b) = (outline[i], outline[j]);
            if (a.Y > p.Y != b.Y > p.Y && p.X < ((b.X - a.X) * (p.Y - a.Y) / (b.Y - a.Y)) + a.X)
            {
                inside = !inside;
            }
        }

        return inside;
    }

    /// <summary>Whether sides cross or one lies in the other.</summary>
    internal static bool Overlap((double X, double Y)[] one, (double X, double Y)[] other) =>
        Inside(one, other[0]) || Inside(other, one[0])
        || Sides(one).Any(a => Sides(other).Any(b => Cross(a.From, a.To, b.From, b.To)));

    /// <summary>From a point to a stretch of line.</summary>
    internal static double Distance(Point p, Point a, Point b)
    {
        var (dx, dy) = (b.X.Millimetres - a.X.Millimetres, b.Y.Millimetres - a.Y.Millimetres);
        var squared = (dx * dx) + (dy * dy);
        var along = squared == 0 ? 0 : Math.Clamp((((p.X.Millimetres - a.X.Millimetres) * dx) + ((p.Y.Millimetres - a.Y.Millimetres) * dy)) / squared, 0, 1);
        return double.Hypot(p.X.Millimetres - a.X.Millimetres - (along * dx), p.Y.Millimetres - a.Y.Millimetres - (along * dy));
    }

    private static IEnumerable<((double X, double Y) From, (double X, double Y) To)> Sides((double X, double Y)[] outline) =>
        outline.Select((p, i) => (p, outline[(i + 1) % outline.Length]));

    private static bool Cross((double X, double Y) a, (double X, double Y) b, (double X, double Y) c, (double X, double Y) d) =>
        Turn(a, b, c) * Turn(a, b, d) < 0 && Turn(c, d, a) * Turn(c, d, b) < 0;

    private static double Turn((double X, double Y) a, (double X, double Y) b, (double X, double Y) p) =>
        ((b.X - a.X) * (p.Y - a.Y)) - ((b.Y - a.Y) * (p.X - a.X));
}
