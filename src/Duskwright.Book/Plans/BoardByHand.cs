using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Shapes;

namespace Duskwright.Book.Plans;

/// <summary>What lies on and under the board, each as a thing that can be chosen and moved, with a handle at every corner of what is chosen.</summary>
/// <remarks>Wireways and scenery lie under the houses; only the one that is chosen is seen through them.</remarks>
internal static class BoardByHand
{
    private const double Reach = 9;
    private const double Corner = 3.4;
    private const double WayReach = 12;

    /// <summary>What the houses stand on.</summary>
    internal static IEnumerable<Part> Under(Town town, BoardView view) => Lines(town.Board!, view).Where(p => !Above(p, view));

    /// <summary>What is seen over the houses: holes, places to look from, the bank's flag, and what is chosen with its corners.</summary>
    internal static IEnumerable<Part> Over(Town town, BoardView view) => Lines(town.Board!, view).Where(p => Above(p, view)).Concat(Points(town, view));

    /// <summary>The corners of the chosen building.</summary>
    internal static IEnumerable<Part> Corners(Town town, BoardView view) =>
        view.Corners && town.Buildings.FirstOrDefault(b => b.Key == view.Chosen)?.Place is { Outline.Count: > 2 } place
            ? Corners(view.Chosen!, view, OwnOutline.Corners(place).Select(p => (p.X.Millimetres, town.Board!.Depth.Millimetres - p.Y.Millimetres)))
            : [];

    private static bool Above(Part part, BoardView view) => part.Chosen || part.Key!.StartsWith("corner:", StringComparison.Ordinal);

    private static IEnumerable<Part> Lines(Board board, BoardView view)
    {
        var depth = board.Depth.Millimetres;
        (double X, double Y) At(Point p) => (p.X.Millimetres, depth - p.Y.Millimetres);
        foreach (var (thing, i) in board.Scenery.Select((s, i) => (s, i)))
        {
            var key = $"thing:{i}";
            var closed = thing.Kind is SceneryKind.Water or SceneryKind.Field or SceneryKind.Obstacle or SceneryKind.Hatch or SceneryKind.Free;
            var line = thing.Points.Count == 1 ? Trace.Circle(At(thing.Points[0]).X, At(thing.Points[0]).Y, Reach) : Trace.Chain(thing.Points.Select(At), closed);
            yield return Thing(key, view, $"{Beneath.Called(thing)}, {(thing.Points.Count == 1 ? "a place" : $"{thing.Points.Count} points")}", [new Stroke(line, key == view.Chosen ? Inks.Ring : Inks.Touch)]);
            foreach (var corner in Corners(key, view, thing.Points.Select(At)))
            {
                yield return corner;
            }
        }

        foreach (var way in board.Wireways)
        {
            var key = $"way:{way.Id}";
            var line = Trace.Chain(way.Points.Select(At));
            yield return Thing(key, view, string.Create(CultureInfo.InvariantCulture, $"wireway {way.Id}, {Length(way.Points):0} mm"),
            [
                new Stroke(line, Inks.Ripple) { Width = WayReach },
                new Stroke(line, key == view.Chosen ? Inks.Ring : Inks.Fold),
            ]);
            foreach (var corner in Corners(key, view, way.Points.Select(At)))
            {
                yield return corner;
            }
        }
    }

    private static IEnumerable<Part> Points(Town town, BoardView view)
    {
        var board = town.Board!;
        var (wide, depth) = (board.Width.Millimetres, board.Depth.Millimetres);
        (double X, double Y) At(Point p) => (p.X.Millimetres, depth - p.Y.Millimetres);
        foreach (var hole in board.FeedHoles)
        {
            var (x, y) = At(hole.At);
            yield return Thing($"hole:{hole.Id}", view, $"hole {hole.Id}", [new Stroke(Trace.Circle(x, y, Reach), view.Chosen == $"hole:{hole.Id}" ? Inks.Ring : Inks.Touch), new Stroke(Trace.Circle(x, y, 4), Inks.Edge)]);
        }

        foreach (var eye in town.Show.ViewingPositions)
        {
            // Who stands off the board is shown at its edge, whole and with the name on the board.
            var (x, y) = (Within(At(eye.At).X, Reach + 5, wide), Within(At(eye.At).Y, Reach + 5, depth));
            var (word, high) = (Labels.Width(new Label(eye.Name, Inks.Small), view.Pen), Inks.Small.Size * view.Pen);
            var key = $"eye:{eye.Name}";
            yield return Thing(key, view, $"{eye.Name}, a place to look from",
            [
                new Stroke(Trace.Circle(x, y, Reach + 5), key == view.Chosen ? Inks.Ring : Inks.Touch),
                new Stroke(new Trace().To(x - 11, y).Curve(x, y - 11, x + 11, y).Curve(x, y + 11, x - 11, y).Closed(), Inks.Card),
                new Stroke(Trace.Circle(x, y, 3.2), Inks.Solid),
                new Lettering(Within(x, word / 2, wide), y + 14 + high > depth ? y - 16 : y + 14 + high, eye.Name, Inks.Small, Anchor.Middle),
            ]);
        }

        if (board.Bank is { } bank)
        {
            var box = BankOnPlan.Box(bank, board.Width.Millimetres, depth);
            yield return Thing("bank", view, "the bank and its pocket", [new Stroke(Trace.Rectangle(box.Left, box.Top - 18, 52, 16), view.Chosen == "bank" ? Inks.Ring : Inks.Card), new Lettering(box.Left + 26, box.Top - 6.4, "the bank", Inks.Small, Anchor.Middle)]);
        }
    }

    /// <summary>The line that is being drawn or measured, with its length.</summary>
    internal static IEnumerable<Part> Draft(BoardView view, double depth)
    {
        if (view.Draft.Count == 0)
        {
            yield break;
        }

        var points = view.Draft.Select(p => (X: p.X.Millimetres, Y: depth - p.Y.Millimetres)).ToList();
        yield return new Part(
        [
            new Stroke(Trace.Chain(points), Inks.Now) { Width = 2.5 },
            .. points.Select(p => new Stroke(Trace.Circle(p.X, p.Y, Corner), Inks.Glow)),
            .. points.Count > 1 ? (Mark[])[new Lettering(points[^1].X + 8, points[^1].Y - 8, string.Create(CultureInfo.InvariantCulture, $"{Length(view.Draft):0} mm"), Inks.Said)] : [],
        ]);
    }

    private static double Within(double at, double room, double whole) => whole < 2 * room ? whole / 2 : Math.Clamp(at, room, whole - room);

    private static double Length(ItemList<Point> points) => points.Zip(points.Skip(1), (a, b) => Math.Sqrt(Math.Pow(a.X.Millimetres - b.X.Millimetres, 2) + Math.Pow(a.Y.Millimetres - b.Y.Millimetres, 2))).Sum();

    private static Part Thing(string key, BoardView view, string words, ItemList<Mark> marks) => new(marks) { Key = key, Words = words, Chosen = key == view.Chosen };

    private static IEnumerable<Part> Corners(string key, BoardView view, IEnumerable<(double X, double Y)> points) =>
        key != view.Chosen ? [] : points.Select((p, i) => new Part([new Stroke(Trace.Circle(p.X, p.Y, Reach), Inks.Touch), new Stroke(Trace.Rectangle(p.X - Corner, p.Y - Corner, 2 * Corner, 2 * Corner), Inks.Glow)])
        {
            Key = $"corner:{i}:{key}",
            Words = string.Create(CultureInfo.InvariantCulture, $"Corner {i + 1}, {p.X:0} mm from the left"),
        });
}
