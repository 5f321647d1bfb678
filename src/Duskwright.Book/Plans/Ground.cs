using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Plan.Document;

namespace Duskwright.Book.Plans;

/// <summary>Levels and scenery of a board.</summary>
internal static class Ground
{
    private const double UsualBreadth = 20;

    internal static IEnumerable<Part> Of(Board board)
    {
        var (width, depth) = (board.Width.Millimetres, board.Depth.Millimetres);
        var edge = Trace.Rectangle(0, 0, width, depth);
        string Outline(IEnumerable<Point> points, bool closed = true) => Trace.Chain(points.Select(p => (p.X.Millimetres, depth - p.Y.Millimetres)), closed);
        var levels = board.Levels.Where(l => l.Outline.Count > 2).SelectMany(l => (Mark[])
        [
            new Stroke(Outline(l.Outline), Inks.Level),
            new Stroke(Inner(l.Outline, width, depth), Inks.Edge),
            new Placed(0, 5, 0, [new Stroke(Inner(l.Outline, width, depth), Inks.Scarp)]),
        ]);
        yield return new Part(levels.ToItemList()) { Clip = edge };
        foreach (var water in board.Scenery.Where(s => s.Kind == SceneryKind.Water))
        {
            var shore = Outline(water.Points);
            List<Mark> marks = [new Stroke(shore, Inks.Water)];
            for (var band = 9; band > 0; band--)
            {
                marks.Add(new Stroke(shore, Inks.Ripple) { Width = band * band * 2.2 });
                marks.Add(new Stroke(shore, Inks.Calm) { Width = (band * band * 2.2) - 1.2 });
            }

            yield return new Part(marks.ToItemList()) { Clip = shore };
            yield return new Part([new Stroke(shore, Inks.Edge)]) { Clip = edge };
        }

        var rest = from kind in (SceneryKind[])[SceneryKind.Path, SceneryKind.Quay, SceneryKind.Jetty, SceneryKind.Steps, SceneryKind.Field, SceneryKind.Tree, SceneryKind.Clutter]
                   from thing in board.Scenery
                   where thing.Kind == kind
                   from mark in Drawn(thing, Outline, depth)
                   select mark;
        yield return new Part(rest.ToItemList()) { Clip = edge };
    }

    // The sides of a level that do not lie on the edge of the board.
    private static string Inner(ItemList<Point> outline, double width, double depth)
    {
        var trace = new Trace();
        foreach (var (from, to) in outline.Zip(outline.Skip(1).Append(outline[0])))
        {
            var (a, b) = ((X: from.X.Millimetres, Y: from.Y.Millimetres), (X: to.X.Millimetres, Y: to.Y.Millimetres));
            if (!((a.X == b.X && (a.X <= 0 || a.X >= width)) || (a.Y == b.Y && (a.Y <= 0 || a.Y >= depth))))
            {
                trace.To(a.X, depth - a.Y).Line(b.X, depth - b.Y);
            }
        }

        return trace.Open();
    }

    private static IEnumerable<Mark> Drawn(Scenery thing, Func<IEnumerable<Point>, bool, string> outline, double depth)
    {
        var size = thing.Size?.Millimetres ?? UsualBreadth;
        var (x, y, r) = (thing.Points[0].X.Millimetres, depth - thing.Points[0].Y.Millimetres, size / 2);
        return thing.Kind switch
        {
            SceneryKind.Path => [new Stroke(outline(thing.Points, false), Inks.Path) { Width = size }],
            SceneryKind.Quay => [new Stroke(outline(thing.Points, false), Inks.Outline)],
            SceneryKind.Jetty or SceneryKind.Steps =>
            [
                new Stroke(outline(thing.Points, false), Inks.Jetty) { Width = size },
                new Stroke(outline(thing.Points, false), Inks.Planks) { Width = size - 2 },
                new Stroke(outline(thing.Points, false), Inks.Gaps) { Width = size - 2 },
            ],
            SceneryKind.Field => [new Stroke(outline(thing.Points, true), Inks.Fine)],
            SceneryKind.Tree =>
            [
                new Stroke(Trace.Circle(x + 2, y + 2.5, r), Inks.Shade),
                new Stroke(Trace.Circle(x, y, r), Inks.Tree),
                new Stroke(new Trace().To(x - (r * .5), y).Curve(x - (r * .1), y - (r * .5), x + (r * .3), y - (r * .1)).To(x - (r * .1), y + (r * .4)).Curve(x + (r * .3), y, x + (r * .5), y + (r * .3)).Open(), Inks.Fine),
            ],
            SceneryKind.Clutter =>
            [
                new Stroke(Trace.Rectangle(x - 4, y - 4, 8, 8), Inks.Card),
                new Stroke(new Trace().To(x - 4, y - 4).Line(x + 4, y + 4).To(x + 4, y - 4).Line(x - 4, y + 4).Open(), Inks.Fine),
            ],
            _ => [],
        };
    }
}
