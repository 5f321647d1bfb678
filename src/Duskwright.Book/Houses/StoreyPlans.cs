using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Results;

namespace Duskwright.Book.Houses;

/// <summary>The floors of a building from above, the front below, side by side from the ground up; rooms and lamps can be chosen, and lamps moved.</summary>
public static class StoreyPlans
{
    private const double Between = 12;
    private const double Margin = 6;
    private const double Glass = 1.6;

    /// <summary>Draws the floors.</summary>
    /// <param name="result">The building.</param>
    /// <param name="lit">How lit its panes are, 0 to 1.</param>
    /// <param name="chosen">The key of what is chosen: <c>room:</c> with storey and room, or <c>lamp:</c> and <c>window:</c> with storey, room and number, each from 0.</param>
    /// <param name="pen">Millimetres of house to a millimetre of paper.</param>
    /// <returns>The drawing, in millimetres of the house; none where no storey is described.</returns>
    public static Drawing? Of(BuildingResult result, double lit, string? chosen, double pen)
    {
        var plan = new HousePlan(result);
        if (plan.Storeys.Count == 0)
        {
            return null;
        }

        List<Part> parts = [];
        var step = plan.Width + Between;
        foreach (var (storey, number) in plan.Storeys.Select((s, i) => (s.Storey, i)))
        {
            var at = number * step;
            parts.Add(new Part(
            [
                new Stroke(Trace.Rectangle(at, -plan.Depth, plan.Width, plan.Depth), Inks.Wall),
                new Lettering(at + (plan.Width / 2), 5.2 * pen, Called(storey, number), Inks.Heading, Anchor.Middle),
            ]));
            var rooms = plan.Rooms.Where(r => r.Storey == number).ToList();
            parts.AddRange(rooms.Select(r => Room(r, Called(storey, number), at, chosen, pen)));
            parts.Add(new Part(Enum.GetValues<WallSide>().SelectMany(w => plan.Windows(w).Where(p => p.Storey == number).Select<WindowPlan, Mark>(p => Opening(plan, p, w, at, lit))).ToItemList()));
            parts.AddRange(rooms.SelectMany(r => r.Lamps.Select((l, i) => LampInHand.Of(r, i, (at + r.Left + l.FromLeft, -l.FromFront), $"lamp, {Trace.N(l.FromFront)} mm behind the front wall", chosen, pen))));
        }

        return new Drawing($"{result.Building.Name}, its floors from above, the front below", -Margin, -plan.Depth - Margin, (plan.Storeys.Count * step) - Between + (2 * Margin), plan.Depth + Margin + (7 * pen), pen, parts.ToItemList());
    }

    private static string Called(Storey storey, int number) => storey.Name ?? (number == 0 ? "ground floor" : $"storey {number + 1}");

    private static Part Room(RoomPlan room, string storey, double at, string? chosen, double pen)
    {
        var key = $"room:{room.Storey}/{room.Index}";
        var name = room.Room.Name ?? $"room {room.Index + 1}";
        return new Part(
        [
            new Stroke(Trace.Rectangle(at + room.Left, -room.Depth, room.Width, room.Depth), Inks.Touch),
            new Stroke(Trace.Rectangle(at + room.Left + 0.8, -room.Depth + 0.8, room.Width - 1.6, room.Depth - 1.6), key == chosen ? Inks.Ring : Inks.Hidden),
            new Lettering(at + room.Left + (room.Width / 2), -room.Depth + (3.6 * pen), name, Inks.RoomName, Anchor.Middle),
        ])
        {
            Key = key,
            Chosen = key == chosen,
            Words = $"{name}, {storey}, {Trace.N(room.Width)} × {Trace.N(room.Depth)} mm, {room.Lamps.Count} {(room.Lamps.Count == 1 ? "LED" : "LEDs")}",
        };
    }

    private static Stroke Opening(HousePlan plan, WindowPlan window, WallSide wall, double at, double lit)
    {
        var (left, wide) = (window.Left, window.Window.Width.Millimetres);
        var path = wall switch
        {
            WallSide.Front => Trace.Rectangle(at + left, -Glass / 2, wide, Glass),
            WallSide.Back => Trace.Rectangle(at + plan.Width - left - wide, -plan.Depth - (Glass / 2), wide, Glass),
            WallSide.Right => Trace.Rectangle(at + plan.Width - (Glass / 2), -left - wide, Glass, wide),
            _ => Trace.Rectangle(at - (Glass / 2), -plan.Depth + left, Glass, wide),
        };
        return new Stroke(path, window.Lamplit ? Inks.Pane : Inks.Card) { Lit = lit };
    }
}
