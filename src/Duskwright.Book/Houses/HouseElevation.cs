using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Results;

namespace Duskwright.Book.Houses;

/// <summary>One wall of a building seen from outside, in millimetres of the house: windows, the lamps behind them, floors and rooms.</summary>
public static class HouseElevation
{
    private const double Eave = 5;
    private const double RidgeInset = 9;
    private const double Margin = 14;
    private const double LampRing = 1.9;

    /// <summary>Draws a wall.</summary>
    /// <param name="result">The building.</param>
    /// <param name="wall">Which wall.</param>
    /// <param name="pen">Millimetres of house to a millimetre of paper; 1 for full size.</param>
    /// <param name="lit">How lit its panes are, 0 to 1.</param>
    /// <returns>The drawing.</returns>
    public static Drawing Of(BuildingResult result, WallSide wall, double pen, double lit)
    {
        var plan = new HousePlan(result);
        var (width, height) = (plan.Along(wall), plan.WallHeight + plan.Rise);
        List<Mark> marks =
        [
            .. Bare(plan, wall, pen),
            .. plan.Windows(wall).SelectMany(w => Pane(w.Window, w.Left, w.Sill, w.Lamplit ? lit : null)),
            .. Lamps(plan, wall, width, pen),
            .. GroundLine(width),
            .. Measure(width, pen),
        ];
        if (!plan.Windows(wall).Any())
        {
            marks.Add(new Lettering(width / 2, -plan.WallHeight / 2, "no window described", Inks.Remark, Anchor.Middle));
        }

        return new Drawing(
            $"{result.Building.Name}, {wall.ToString().ToLowerInvariant()}", -Margin, -height - 3, width + (2 * Margin), height + 6 + (7 * pen), pen, [new Part(marks.ToItemList())]);
    }

    /// <summary>The walls worth drawing: the front, and every other with a window.</summary>
    /// <param name="building">The building.</param>
    /// <returns>The walls, the front first.</returns>
    public static IReadOnlyList<WallSide> Walls(Building building)
    {
        var windows = building.Storeys.SelectMany(s => s.Rooms).SelectMany(r => r.Windows).Select(w => w.Wall).ToHashSet();
        return [.. Enum.GetValues<WallSide>().Where(w => w == WallSide.Front || windows.Contains(w))];
    }

    /// <summary>A wall with its roof, floors and rooms, before windows and lamps are drawn in.</summary>
    internal static IEnumerable<Mark> Bare(HousePlan plan, WallSide wall, double pen)
    {
        var width = plan.Along(wall);
        return
        [
            new Stroke(Trace.Rectangle(0, -plan.WallHeight, width, plan.WallHeight), Inks.Wall),
            .. Roof(plan, wall, width),
            .. Rooms(plan, wall, width, pen),
        ];
    }

    private static IEnumerable<Mark> Roof(HousePlan plan, WallSide wall, double width)
    {
        var (eaves, ridge) = (-plan.WallHeight, -plan.WallHeight - plan.Rise);
        var shape = plan.Result.Building.Roof?.Shape ?? RoofShape.Gable;
        var facing = wall is WallSide.Front or WallSide.Back;
        var ink = (plan.Result.Building.Roof?.Covering ?? RoofCovering.Slate) switch { RoofCovering.Slate => Inks.Slate, RoofCovering.Thatch => Inks.Thatch, _ => Inks.Tile };
        if (shape == RoofShape.Flat)
        {
            yield return new Stroke(Trace.Rectangle(-1.5, eaves - 3, width + 3, 3), ink);
            yield break;
        }

        var inset = shape switch { RoofShape.Point => width / 2, RoofShape.Hip => Math.Min(width / 2, plan.Depth / 2), _ => facing ? Math.Min(RidgeInset, width / 4) : width / 2 };
        if (shape == RoofShape.Gable && !facing)
        {
            // The end of a gable is wall up to the ridge.
            yield return new Stroke(new Trace().To(0, eaves).Line(width / 2, ridge).Line(width, eaves).Closed(), Inks.Wall);
            yield return new Stroke(new Trace().To(-Eave, eaves + 2).Line(width / 2, ridge - 1).Line(width + Eave, eaves + 2).Open(), Inks.Outline);
            yield break;
        }

        yield return new Stroke(new Trace().To(-Eave, eaves).Line(inset, ridge).Line(width - inset, ridge).Line(width + Eave, eaves).Closed(), ink);
        var courses = new Trace();
        for (var row = 1; row * 5 < plan.Rise; row++)
        {
            var y = eaves - (row * 5);
            var slope = (inset + Eave) * row * 5 / plan.Rise;
            for (var x = -Eave + slope + 3 + (row % 2 * 4); x < width + Eave - slope - 3; x += 8 + (row * 3 % 5))
            {
                courses.To(x, y + 3.2).Line(x + 0.9, y);
            }
        }

        yield return new Stroke(courses.Open(), Inks.Fine);
    }

    private static IEnumerable<Mark> Rooms(HousePlan plan, WallSide wall, double width, double pen)
    {
        foreach (var (_, floor, _) in plan.Storeys.Skip(1))
        {
            yield return new Stroke(Trace.Segment(0, -floor, width, -floor), Inks.Hidden);
        }

        if (wall is WallSide.Right or WallSide.Left)
        {
            yield break;
        }

        foreach (var room in plan.Rooms)
        {
            var left = Seen(wall, width, room.Left, room.Width);
            if (room.Index > 0 && room.Left < plan.Width - 1)
            {
                var edge = wall == WallSide.Back ? left + room.Width : left;
                yield return new Stroke(Trace.Segment(edge, -room.Floor, edge, -room.Floor - room.Height), Inks.Hidden);
            }

            if (room.Room.Name is { } name)
            {
                yield return new Lettering(left + (room.Width / 2), -room.Floor - (1.1 * pen), name, Inks.RoomName, Anchor.Middle);
            }
        }
    }

    private static IEnumerable<Mark> Lamps(HousePlan plan, WallSide wall, double width, double pen)
    {
        if (wall is WallSide.Right or WallSide.Left)
        {
            yield break;
        }

        foreach (var room in plan.Rooms)
        {
            foreach (var lamp in room.Lamps)
            {
                foreach (var mark in LampAt(Seen(wall, width, room.Left + lamp.FromLeft, 0), -room.Floor - lamp.AboveFloor, lamp.Lamp.Name, pen))
                {
                    yield return mark;
                }
            }
        }
    }

    /// <summary>A lamp hidden behind a wall or roof: a crossed ring with its name.</summary>
    internal static IEnumerable<Mark> LampAt(double x, double y, string name, double pen)
    {
        const double d = LampRing * 0.707;
        return
        [
            new Stroke(Trace.Circle(x, y, LampRing), Inks.Hidden),
            new Stroke(new Trace().To(x - d, y - d).Line(x + d, y + d).To(x - d, y + d).Line(x + d, y - d).Open(), Inks.Thin),
            new Lettering(x + LampRing + (0.6 * pen), y + (0.9 * pen), name, Inks.LampName),
        ];
    }

    /// <summary>A window with its bars and sill; hatched where no lamp is behind it.</summary>
    internal static IEnumerable<Mark> Pane(Window window, double left, double sill, double? lit)
    {
        var (w, h) = (window.Width.Millimetres, window.Height.Millimetres);
        if (lit is { } glow)
        {
            yield return new Stroke(Trace.Rectangle(left, -sill - h, w, h), Inks.Pane) { Lit = glow };
        }
        else
        {
            // Hatched: stays dark.
            yield return new Stroke(Trace.Rectangle(left, -sill - h, w, h), Inks.Card);
            yield return new Stroke(Hatching.Of(left, -sill - h, w, h, 1.4), Inks.Hatch);
        }

        if (window.Pane?.Bars ?? false)
        {
            yield return new Stroke(new Trace().To(left + (w / 2), -sill - h).Line(left + (w / 2), -sill).To(left, -sill - (h / 2)).Line(left + w, -sill - (h / 2)).Open(), Inks.Thin);
        }

        yield return new Stroke(Trace.Segment(left - 1, -sill, left + w + 1, -sill), Inks.Edge);
    }

    private static IEnumerable<Mark> GroundLine(double width)
    {
        yield return new Stroke(Trace.Segment(4 - Margin, 0, width + Margin - 4, 0), Inks.Outline);
        var hatch = new Trace();
        for (var x = 5 - Margin; x < width + Margin - 5; x += 2.4)
        {
            hatch.To(x, 2).Line(x + 1.9, 0.2);
        }

        yield return new Stroke(hatch.Open(), Inks.Hatch);
    }

    private static IEnumerable<Mark> Measure(double width, double pen)
    {
        var y = 3 + (3.4 * pen);
        yield return new Stroke(new Trace().To(0, y - 1.5).Line(0, y + 1.5).To(width, y - 1.5).Line(width, y + 1.5).To(0, y).Line(width, y).Open(), Inks.Thin);
        yield return new Lettering(width / 2, y + pen, string.Create(CultureInfo.InvariantCulture, $"{width:0.#} mm"), Inks.Remark, Anchor.Middle);
    }

    // From behind, left and right change places.
    private static double Seen(WallSide wall, double width, double left, double size) => wall == WallSide.Back ? width - left - size : left;
}
