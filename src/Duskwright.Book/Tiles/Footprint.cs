using Duskwright.Book.Drawings;
using Duskwright.Book.Plans;
using Duskwright.Plan.Document;

namespace Duskwright.Book.Tiles;

/// <summary>The ground a building covers, as it is marked out on the board: its outline, and a small triangle at the middle of its front.</summary>
internal static class Footprint
{
    private const double Triangle = 3;

    internal static Thing Of(Building building, double boardDepth)
    {
        var place = building.Place!;
        var name = new Label(building.Name, Inks.Name);
        var (x, y) = (place.At.X.Millimetres, boardDepth - place.At.Y.Millimetres);
        if (place.Round && place.Width is { } across)
        {
            return Thing.Of(new Stroke(Trace.Circle(x, y, across.Millimetres / 2), Inks.Thin), Cross(x, y)) with { Name = name };
        }

        List<(double X, double Y)> corners = place.Outline.Count > 0
            ? [.. place.Outline.Select(p => (p.X.Millimetres, p.Y.Millimetres))]
            : place is { Width: { } width, Depth: { } depth } ? Rectangle(width.Millimetres / 2, depth.Millimetres / 2) : [];
        if (corners.Count == 0)
        {
            // A lamp post or a house of unknown size: where its middle comes.
            return Thing.Of(Cross(x, y)) with { Lines = [name] };
        }

        var (sin, cos) = Math.SinCos(place.Rotation.Degrees * Math.PI / 180);
        (double X, double Y) OnBoard((double X, double Y) p) => (x + (p.X * cos) - (p.Y * sin), y - (p.X * sin) - (p.Y * cos));
        var front = corners.Min(c => c.Y);
        return Thing.Of(
            new Stroke(Trace.Chain(corners.Select(OnBoard), closed: true), Inks.Thin),
            new Stroke(Trace.Chain(new[] { (-Triangle / 2, front), (Triangle / 2, front), (0, front - Triangle) }.Select(OnBoard), closed: true), Inks.Solid)) with
        { Name = name };
    }

    private static List<(double X, double Y)> Rectangle(double w, double d) => [(-w, -d), (w, -d), (w, d), (-w, d)];

    private static Stroke Cross(double x, double y) => new(new Trace().To(x - 3, y).Line(x + 3, y).To(x, y - 3).Line(x, y + 3).Open(), Inks.Thin);
}
