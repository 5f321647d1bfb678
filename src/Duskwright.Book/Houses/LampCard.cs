using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Results;

namespace Duskwright.Book.Houses;

/// <summary>The card that carries the lamps of one room, at full size: a hole for each, slots for its legs, flaps to fold back and glue.</summary>
public static class LampCard
{
    private const double Flap = 9;
    private const double Frame = 3;
    private const double UsualHeight = 30;
    private const double UsualSpacing = 18;

    // Legs of leaded lamps stand a tenth of an inch apart.
    private const double LegSpacing = 2.54;
    private const double PinHole = 1;

    /// <summary>Draws the cards of a building.</summary>
    /// <param name="result">The building.</param>
    /// <returns>One drawing for each room with lamps; one in all where rooms are not described.</returns>
    public static IReadOnlyList<Drawing> Of(BuildingResult result)
    {
        var rooms = new HousePlan(result).Rooms.Where(r => r.Lamps.Count > 0).ToList();
        if (rooms.Count > 0)
        {
            return [.. rooms.Select(r => Card(r.Room.Name ?? "room", r.Width, r.Height, r.Lamps))];
        }

        return result.Lamps.Count == 0
            ? []
            : [Card("all lamps, spaced as you like", UsualSpacing * (result.Lamps.Count + 0.5), UsualHeight, [.. result.Lamps.Select((l, i) => new LampPlan(l, UsualSpacing * (i + 0.75), UsualHeight / 2, 0))])];
    }

    private static Drawing Card(string room, double width, double height, IReadOnlyList<LampPlan> lamps)
    {
        List<Mark> marks =
        [
            new Stroke(Trace.Rectangle(0, -Flap, width, height + (2 * Flap)), Inks.Card),
            new Stroke(Hatching.Of(0, -Flap, width, Flap, 2.5), Inks.Hatch),
            new Stroke(Hatching.Of(0, height, width, Flap, 2.5), Inks.Hatch),
            new Stroke(Trace.Segment(0, 0, width, 0), Inks.Fold),
            new Stroke(Trace.Segment(0, height, width, height), Inks.Fold),
            .. lamps.SelectMany(l => Hole(l, height)),
        ];
        if (width > 26)
        {
            marks.Add(new Lettering(width / 2, -Flap + 5.4, "fold back, glue", Inks.Remark, Anchor.Middle));
            marks.Add(new Lettering(width / 2, height + 5.4, "fold back, glue", Inks.Remark, Anchor.Middle));
        }

        return new Drawing($"Lamp card, {room}", -Frame, -Flap - Frame, width + (2 * Frame), height + (2 * Flap) + (2 * Frame), 1, [new Part(marks.ToItemList())]);
    }

    private static IEnumerable<Mark> Hole(LampPlan lamp, double height)
    {
        var (x, y) = (lamp.FromLeft, height - lamp.AboveFloor);
        var hole = (lamp.Lamp.Part.CardHole?.Millimetres ?? PinHole) / 2;
        yield return new Stroke(Trace.Circle(x, y, hole), Inks.Edge);
        yield return new Stroke(new Trace().To(x - hole - 1.6, y).Line(x + hole + 1.6, y).To(x, y - hole - 1.6).Line(x, y + hole + 1.6).Open(), Inks.Thin);
        yield return new Lettering(x + hole + 1.2, y - hole - 0.6, lamp.Lamp.Name, Inks.LampName);
        if (lamp.Lamp.Part.Kind is not (LampKind.Led or LampKind.Flickering) || lamp.Lamp.Part.CardHole is null)
        {
            yield break;
        }

        // The long leg is plus: its slot is marked before the legs are cut.
        var legs = y + hole + 3;
        foreach (var side in (double[])[-1, 1])
        {
            yield return new Stroke(Trace.Rectangle(x + (side * LegSpacing / 2) - 0.35, legs, 0.7, 3), Inks.Thin);
        }

        yield return new Lettering(x - LegSpacing - 1.1, legs + 2.4, "+", Inks.LampName, Anchor.Middle);
        if (hole * 2 > LegSpacing)
        {
            yield return new Lettering(x + LegSpacing, legs + 2.4, string.Create(CultureInfo.InvariantCulture, $"ø {hole * 2:0.#}"), Inks.Tiny);
        }
    }
}
