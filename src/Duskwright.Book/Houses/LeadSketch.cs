using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Study.Lists;

namespace Duskwright.Book.Houses;

/// <summary>The leads of one building to cut, drawn at a quarter of their length; the mark of the plus at its end.</summary>
public static class LeadSketch
{
    private const double RowHeight = 7;
    private const double Quarter = 0.25;
    private const double Longest = 38;

    /// <summary>Draws the leads.</summary>
    /// <param name="rows">The rows of the cut list for one building.</param>
    /// <returns>The drawing, 86 mm wide.</returns>
    public static Drawing Of(IReadOnlyList<CutRow> rows) =>
        new("Leads to cut, at a quarter of their length", 0, 0, 86, Math.Max(1, rows.Count) * RowHeight, 1, [new Part(rows.SelectMany((r, i) => Lead(r, (i * RowHeight) + 4)).ToItemList())]);

    private static IEnumerable<Mark> Lead(CutRow row, double y)
    {
        var millimetres = Math.Ceiling((row.Length.Value * 1000) - 1e-9);
        yield return new Stroke(Trace.Rectangle(0, y - 2.6, 3.4, 3.4), Inks.Thin);
        yield return new Lettering(5.4, y, row.Label, Inks.Ref);
        yield return new Lettering(23, y, string.Create(CultureInfo.InvariantCulture, $"{row.Conductors} × {millimetres:0} mm{(row.Laid ? ", laid" : "")}"), Inks.Value);
        const double from = 46;
        var drawn = Math.Min(Longest, millimetres * Quarter);
        yield return new Stroke(Trace.Segment(from, y - 1, from + drawn, y - 1), Inks.Lead);
        yield return new Stroke(Trace.Segment(from + 3, y - 3, from + 3, y + 1), Inks.Thin);
        yield return new Lettering(from + 1.4, y - 2.2, "+", Inks.Tiny, Anchor.Middle);
        if (millimetres * Quarter > Longest)
        {
            // Broken off: longer than it is drawn.
            var at = from + (drawn * 0.6);
            yield return new Stroke(new Trace().To(at - 1.2, y - 3).Line(at + 0.4, y + 1).Line(at + 2, y + 1).Line(at + 0.4, y - 3).Closed(), Inks.Gap);
            yield return new Stroke(new Trace().To(at - 1.2, y - 3).Line(at + 0.4, y + 1).To(at + 0.4, y - 3).Line(at + 2, y + 1).Open(), Inks.Thin);
        }
    }
}
