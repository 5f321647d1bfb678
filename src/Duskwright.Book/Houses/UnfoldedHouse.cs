using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Results;

namespace Duskwright.Book.Houses;

/// <summary>The four walls of a building side by side on one ground line, seen from outside; windows, and lamps behind the front, can be chosen and moved.</summary>
public static class UnfoldedHouse
{
    // Room between two walls for the eaves of both.
    private const double Between = 16;
    private const double Margin = 9;
    private const double Handle = 1.6;

    /// <summary>Draws the walls.</summary>
    /// <param name="result">The building.</param>
    /// <param name="lit">How lit its panes are, 0 to 1.</param>
    /// <param name="chosen">The key of what is chosen: <c>window:</c> or <c>lamp:</c> with storey, room and number, each from 0, as in <c>window:0/0/1</c>.</param>
    /// <param name="pen">Millimetres of house to a millimetre of paper.</param>
    /// <returns>The drawing, in millimetres of the house; a chosen window has a handle whose key is <c>size:</c> and the window's.</returns>
    public static Drawing Of(BuildingResult result, double lit, string? chosen, double pen)
    {
        var plan = new HousePlan(result);
        var (left, walls, parts) = (0.0, new List<Part>(), new List<Part>());
        foreach (var wall in Enum.GetValues<WallSide>())
        {
            var width = plan.Along(wall);
            var at = left;
            walls.Add(new Part(
            [
                new Placed(at, 0, 0, HouseElevation.Bare(plan, wall, pen).ToItemList()),
                new Lettering(at + (width / 2), 5.2 * pen, Named(wall), Inks.Heading, Anchor.Middle),
            ]));
            parts.AddRange(plan.Windows(wall).SelectMany(w => Drawn(w, wall, at, lit, chosen, pen)));
            left += width + Between;
        }

        parts.AddRange(plan.Rooms.SelectMany(r => r.Lamps.Select((l, i) => LampInHand.Of(r, i, (r.Left + l.FromLeft, -r.Floor - l.AboveFloor), $"lamp behind the front, {Trace.N(l.AboveFloor)} mm above the floor", chosen, pen))));
        var right = left - Between;
        walls.Add(new Part([new Stroke(Trace.Segment(-Margin, 0, right + Margin, 0), Inks.Outline)]));
        var top = plan.WallHeight + plan.Rise + 4;
        return new Drawing($"{result.Building.Name}, its four walls from outside", -Margin, -top, right + (2 * Margin), top + (7 * pen), pen, [.. walls, .. parts]);
    }

    private static IEnumerable<Part> Drawn(WindowPlan window, WallSide wall, double at, double lit, string? chosen, double pen)
    {
        var key = $"window:{window.Storey}/{window.Room}/{window.Index}";
        var (w, h) = (window.Window.Width.Millimetres, window.Window.Height.Millimetres);
        var (left, top) = (at + window.Left, -window.Sill - h);
        var size = $"{Trace.N(w)} × {Trace.N(h)} mm";
        yield return new Part(
        [
            .. HouseElevation.Pane(window.Window, left, window.Sill, window.Lamplit ? lit : null),
            new Stroke(Trace.Rectangle(left - 1, top - 1, w + 2, h + 2), key == chosen ? Inks.Ring : Inks.Touch),
        ])
        {
            Key = key,
            Chosen = key == chosen,
            Words = $"Window, {Named(wall)}, storey {window.Storey + 1}, {size}, {Trace.N(window.Left)} mm from the left",
        };
        if (key == chosen)
        {
            yield return new Part(
            [
                new Stroke(Trace.Circle(left + w, top, LampInHand.Reach), Inks.Touch),
                new Stroke(Trace.Rectangle(left + w - Handle, top - Handle, 2 * Handle, 2 * Handle), Inks.Glow),
            ])
            {
                Key = $"size:{key}",
                Words = $"Size of this window, {size}",
            };
            yield return new Part([new Lettering(left + (w / 2), top - (1.8 * pen), size, Inks.Small, Anchor.Middle)]);
        }
    }

    private static string Named(WallSide wall) => wall switch { WallSide.Front => "front", WallSide.Right => "right side", WallSide.Back => "back", _ => "left side" };
}
