using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Book.Plans;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Book.Diagrams;

/// <summary>What is electrically connected when all switches of a circuit are on, as a diagram: packs at the left, houses in the order of their switches, the minus at the right.</summary>
/// <remarks>Symbols as in IEC 60617. Plus conductors are heavy and carry a plus and a bar, minus conductors are thin: neither is told by colour. No two conductors cross.</remarks>
public static class CircuitDiagram
{
    private const double Width = 180;
    private const double TopLine = 6;
    private const double Above = 4;
    private const double PageEnd = 8;

    /// <summary>Draws the circuits of a town.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="height">Height of a page, mm; infinite for each circuit in one piece, as a screen shows it.</param>
    /// <returns>For each circuit the numbers of its packs and its pages; packs without lamps have none.</returns>
    public static IReadOnlyList<(ItemList<int> Packs, ItemList<Drawing> Pages)> Of(TownStudy study, double height = double.PositiveInfinity) =>
        [.. CircuitRows.Circuits(study).Select(packs => (packs.Select(p => p.Number).ToItemList(), Pages(study, packs, height).ToItemList()))];

    private static IEnumerable<Drawing> Pages(TownStudy study, IReadOnlyList<PackResult> packs, double height)
    {
        var rows = CircuitRows.Of(study, packs);
        var rails = Rails.Of(rows);
        var pages = CircuitRows.Pages(rows, height - TopLine - Above - PageEnd);
        var name = $"Circuit of pack {string.Join(" and ", packs.Select(p => p.Number))}";
        foreach (var ((from, to), page) in pages.Select((p, i) => (p, i + 1)))
        {
            var heights = new Dictionary<int, double>();
            var y = TopLine + Above;
            for (var i = from; i <= to; i++)
            {
                heights[i] = y + rows[i].Above;
                y += rows[i].Above + rows[i].Below;
            }

            List<Mark> marks = [.. from == 0 ? WayBack(study) : []];
            foreach (var rail in rails)
            {
                marks.AddRange(Upright(rail, from, to, heights, y));
            }

            for (var i = from; i <= to; i++)
            {
                marks.AddRange(CircuitLine.Of(study, rows[i], heights[i]));
            }

            foreach (var house in Enumerable.Range(from, to - from + 1).GroupBy(i => rows[i].HouseKey))
            {
                marks.AddRange(Frame(rows[house.First()], heights[house.First()], heights[house.Last()], begun: !rows[house.First()].First.House));
            }

            yield return new Drawing($"{name}{(pages.Count > 1 ? $", page {page} of {pages.Count}" : "")}", 0, 0, Width, y + PageEnd, 1, [new Part(marks.ToItemList())]);
        }
    }

    private static IEnumerable<Mark> WayBack(TownStudy study)
    {
        yield return new Stroke(Trace.Segment(Rails.PackMinus, TopLine, Rails.Minus, TopLine), Inks.Thin);
        yield return new Placed(90, TopLine, 0, Symbols.Minus().ToItemList());
        var words = study.Town.Wiring is { ReturnWire: { } wire, ReturnLength: { Metres: > 0 } length }
            ? string.Create(CultureInfo.InvariantCulture, $"common return, {Catalogue.FindWire(study.Town, wire)!.Name}, {length.Metres:0.00} m")
            : "minus strip at the bank";
        yield return new Lettering(95, TopLine - 1.4, words, Inks.Note);
    }

    // The part of a rail that this page shows, its joints, and arrows where it goes on.
    private static IEnumerable<Mark> Upright(Rail rail, int from, int to, Dictionary<int, double> heights, double bottom)
    {
        var first = from == 0 ? Rails.Top : from;
        if (rail.First > to || rail.Last < first || rail.First == rail.Last)
        {
            yield break;
        }

        var (comes, goes) = (rail.First < first, rail.Last > to);
        var top = comes ? TopLine : rail.First == Rails.Top ? TopLine : heights[rail.First];
        var end = goes ? bottom : rail.Last == Rails.Top ? TopLine : heights[rail.Last];
        yield return new Stroke(Trace.Segment(rail.X, top, rail.X, end), rail.Positive ? Inks.Conductor : Inks.Thin);

        // Where a line meets a rail that goes on below it, three conductors meet; at its last line a rail only turns.
        foreach (var at in rail.At.Where(i => i >= from && i <= to && i < rail.Last))
        {
            yield return new Stroke(Trace.Circle(rail.X, heights[at], 0.8), Inks.Solid);
        }

        foreach (var (mark, y) in ((bool, double)[])[(comes, top), (goes, end)])
        {
            if (mark)
            {
                var tip = y == top ? y - 2 : y + 2;
                yield return new Stroke(new Trace().To(rail.X - 1.2, y).Line(rail.X + 1.2, y).Line(rail.X, tip).Closed(), Inks.Card);
                yield return new Lettering(rail.X, y == top ? tip - 0.8 : tip + 2.4, rail.Tag, Inks.Tiny, Anchor.Middle);
            }
        }
    }

    private static IEnumerable<Mark> Frame(CircuitRow row, double first, double last, bool begun)
    {
        const double left = Rails.HousePlus - 8;
        const double right = Rails.HouseMinus + 8;
        yield return new Stroke(Trace.Rectangle(left, first - 7.4, right - left, last - first + 11), Inks.Fold);
        yield return new Lettering(left, first - 8.6, $"{row.House.Code}  {Fitting.Short(row.House.Building.Name, Inks.RoomName, 54)}{(begun ? ", continued" : "")}", Inks.RoomName);
    }
}
