using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study;
using Duskwright.Study.Results;
using SkiaSharp;

namespace Duskwright.Book.Plans;

/// <summary>The board from above, in millimetres of the board: grounds, bank, wires by circuit, holes, and every building with its panes.</summary>
public static class BoardPlan
{
    private const double Edge = 12;

    // Words and lines of a small board are those of a drawing at least this long on paper, mm.
    private const double LeastLength = 160;

    private const double WireCorner = 14;

    /// <summary>Draws the board.</summary>
    /// <param name="study">The town's results; its town must have a board.</param>
    /// <param name="moment">The hour.</param>
    /// <param name="view">What else it shows.</param>
    /// <returns>The drawing.</returns>
    /// <exception cref="ArgumentException">The town has no board.</exception>
    public static Drawing Of(TownStudy study, Moment moment, BoardView view)
    {
        var board = study.Town.Board ?? throw new ArgumentException($"{study.Town.Name} has no board to draw.", nameof(study));
        var (width, depth) = (board.Width.Millimetres, board.Depth.Millimetres);
        view = view with { Pen = Math.Min(view.Pen, Math.Max(width, depth) / LeastLength) };
        var lamps = moment.Lamps.ToLookup(l => l.Building, StringComparer.Ordinal);
        var houses = study.Buildings.Where(b => b.Building.Place is not null && view.Standing?.Contains(b.Building.Key) != false).Select(b => new HouseOnPlan(b, [.. lamps[b.Building.Key]], depth)).ToList();
        List<Part> parts =
        [
            new Part([new Stroke(new Trace().To(0, depth).Line(9, depth + 9).Line(width + 9, depth + 9).Line(width + 9, 9).Line(width, 0).Line(width, depth).Closed(), Inks.Side), new Stroke(Trace.Rectangle(0, 0, width, depth), Inks.Quay)]),
            .. Ground.Of(board),
            .. board.Photograph is { } photograph && view.Photograph is { } address ? (Part[])[Underlay(photograph, address, width, depth)] : [],
            .. view.Dusk ? (Part[])[] : [Beneath.Of(board)],
            .. board.Bank is { } bank ? BankOnPlan.Of(study, moment, bank, depth, width, view) : [],
            .. Wires(study, view, depth),
            .. TapsOnPlan.Of(study, view, depth, WireCorner),
            .. Holes(study, depth),
            Numbers(study, view, depth),
        ];
        parts.AddRange(view.ByHand ? BoardByHand.Under(study.Town, view) : []);
        if (view.Dusk)
        {
            parts.Add(new Part(houses.SelectMany(h => h.Halos()).ToItemList()));
        }

        parts.AddRange(houses.Select(h => h.Drawn(view)));
        parts.AddRange(view.ByHand ? BoardByHand.Over(study.Town, view) : []);
        List<SKRect> taken = board.Bank is { } pocket ? [BankOnPlan.Box(pocket, width, depth)] : [];
        List<SKRect> busy = [.. houses.Select(h => h.Box()), .. taken];
        var (box, cartouche) = Cartouche(study, busy, width, depth, view.Pen);
        parts.AddRange(Labels.Of([.. houses.Select(h => (h.Box(), h.Lines(view))), .. view.Dusk ? [] : Beneath.Words(board, [.. busy, box])], [.. taken, box], new SKRect(0, 0, (float)width, (float)depth), view.Pen));
        parts.Add(cartouche);
        parts.AddRange(BoardByHand.Corners(study.Town, view));
        parts.AddRange(BoardByHand.Draft(view, depth));
        return new Drawing($"{study.Town.Name}, the board from above", -Edge, -Edge, width + 32, depth + 30, view.Pen, parts.ToItemList());
    }

    // Over the grounds, which would hide it, and under all that is drawn from it.
    private static Part Underlay(Photograph photograph, string address, double width, double depth) =>
        new([new Underlay(photograph.At.X.Millimetres, depth - photograph.At.Y.Millimetres - photograph.Depth.Millimetres, photograph.Width.Millimetres, photograph.Depth.Millimetres, address)])
        {
            Clip = Trace.Rectangle(0, 0, width, depth),
        };

    private static IEnumerable<Part> Wires(TownStudy study, BoardView view, double depth)
    {
        var buildings = study.Buildings.ToDictionary(b => b.Building.Key, StringComparer.Ordinal);
        foreach (var (route, suggested) in (view.Instead ?? study.Town.Routes).Select(r => (r, false)).Concat(view.Suggested.Select(r => (r, true))))
        {
            if (buildings.TryGetValue(route.Building, out var house))
            {
                var line = route.Points.Select(p => (p.X.Millimetres, depth - p.Y.Millimetres)).ToList();
                yield return new Part([new Stroke(Trace.Rounded(line, WireCorner), suggested ? Inks.Suggested(house.Circuit) : Inks.Wire(house.Circuit))])
                {
                    Words = string.Create(CultureInfo.InvariantCulture, $"{house.Building.Name}, {route.Length.Metres:0.00} m{(suggested ? ", suggested" : "")}"),
                };
            }
        }
    }

    // The number of each circuit, in the middle of the longest straight stretch of its wires.
    private static Part Numbers(TownStudy study, BoardView view, double depth)
    {
        var circuits = study.Buildings.ToDictionary(b => b.Building.Key, b => b.Circuit, StringComparer.Ordinal);
        var stretches =
            from route in (view.Instead ?? study.Town.Routes).Concat(view.Suggested)
            let circuit = circuits.GetValueOrDefault(route.Building)
            where circuit > 0
            from ends in route.Points.Zip(route.Points.Skip(1), (a, b) => (From: (X: a.X.Millimetres, Y: depth - a.Y.Millimetres), To: (X: b.X.Millimetres, Y: depth - b.Y.Millimetres)))
            group ends by circuit into wires
            select (Circuit: wires.Key, Longest: wires.MaxBy(w => Math.Pow(w.From.X - w.To.X, 2) + Math.Pow(w.From.Y - w.To.Y, 2)));
        return new Part(stretches.SelectMany(s => (Mark[])
        [
            new Stroke(Trace.Circle((s.Longest.From.X + s.Longest.To.X) / 2, (s.Longest.From.Y + s.Longest.To.Y) / 2, 2 * view.Pen), Inks.Badge(s.Circuit)),
            new Lettering((s.Longest.From.X + s.Longest.To.X) / 2, ((s.Longest.From.Y + s.Longest.To.Y) / 2) + (0.95 * view.Pen), s.Circuit.ToString(CultureInfo.InvariantCulture), Inks.Number, Anchor.Middle),
        ]).ToItemList());
    }

    private static IEnumerable<Part> Holes(TownStudy study, double depth)
    {
        foreach (var hole in study.Town.Board!.FeedHoles)
        {
            var pairs = study.Town.Buildings.Count(b => b.FeedHole == hole.Id);
            var (x, y) = (hole.At.X.Millimetres, depth - hole.At.Y.Millimetres);
            yield return new Part([new Stroke(Trace.Circle(x, y, 3.2), Inks.Card), .. pairs > 1 ? (Mark[])[new Lettering(x + 5, y + 3, pairs.ToString(CultureInfo.InvariantCulture), Inks.Small)] : []])
            {
                Words = $"Hole {hole.Id}{(hole.Bore is { } bore ? string.Create(CultureInfo.InvariantCulture, $", {bore.Millimetres:0.#} mm") : "")}, {pairs} {(pairs == 1 ? "pair" : "pairs")}",
            };
        }
    }

    private static (SKRect Box, Part Part) Cartouche(TownStudy study, IReadOnlyList<SKRect> busy, double width, double depth, double pen)
    {
        var houses = study.Buildings.Count(b => b.Building.Kind == BuildingKind.House);
        (Label Label, double Down)[] lines =
        [
            (new Label(study.Town.Name, Inks.Title), 0),
            (new Label(string.Create(CultureInfo.InvariantCulture, $"{(study.Town.Note is { } note ? note + " on a board" : "a board")} of {width:0} × {depth:0} mm"), Inks.Subtitle), 5),
            (new Label(Counts(study, houses), Inks.Note), 9.4),
        ];
        var size = new SKSize((float)Math.Max(lines.Max(l => Labels.Width(l.Label, pen)), 108 + (10 * pen)), (float)(24 * pen));

        // In the corner where it covers least; at the front on the left where all are free.
        var (left, right, top, bottom) = ((float)(width * .043), (float)(width * .957) - size.Width, (float)(3 * pen), (float)(depth - (27 * pen)));
        var box = new[] { new SKPoint(left, bottom), new SKPoint(left, top), new SKPoint(right, top), new SKPoint(right, bottom) }
            .Select(p => SKRect.Create(p, size))
            .MinBy(b => busy.Sum(h => Labels.Shared(b, h)));
        var (x, y) = (box.Left, box.Top + (9 * pen));
        var scale = y + (14 * pen);
        return (box, new Part(
        [
            new Stroke(Trace.Rectangle(0, 0, width, depth), Inks.Outline),
            .. lines.Select(l => new Lettering(x, y + (l.Down * pen), l.Label.Text, l.Label.Hand)),
            new Stroke(new Trace().To(x, scale - 4).Line(x, scale + 4).To(x, scale).Line(x + 100, scale).To(x + 100, scale - 4).Line(x + 100, scale + 4).Open(), Inks.Thin),
            new Lettering(x + 108, scale + pen, "100 mm", Inks.Note),
        ]));
    }

    private static string Counts(TownStudy study, int houses)
    {
        var others = study.Buildings.Count - houses;
        return study.Buildings.Count == 0 ? "nothing stands on it yet" : $"{houses} {(houses == 1 ? "house" : "houses")}{(others switch { 0 => "", 1 => " and 1 lamp or boat", _ => $" and {others} lamps and boats" })} · {study.Lamps.Count} {(study.Lamps.Count == 1 ? "LED" : "LEDs")} · {study.Packs.Count} {(study.Packs.Count == 1 ? "pack" : "packs")}";
    }
}
