using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Study;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Book.Plots;

/// <summary>How long each pack lasts, on a scale that doubles; the shortest on top.</summary>
public static class RunTimePlot
{
    private const double Start = 200;
    private const double Width = 390;
    private const double RowHeight = 50;
    private const double BarHeight = 26;
    private const double Longest = 256;

    /// <summary>Draws the plot.</summary>
    /// <param name="study">The town's results.</param>
    /// <returns>The drawing.</returns>
    public static Drawing Of(TownStudy study)
    {
        var packs = study.Packs.Where(p => p.Lamps > 0).OrderBy(p => p.HoursToDim?.Value ?? double.MaxValue).ToList();
        var show = study.Town.Show.HoursPerDay.Hours;
        var bottom = (packs.Count * RowHeight) + 34;
        List<Mark> marks = [];
        for (var h = 1; h <= Longest; h *= 2)
        {
            marks.Add(new Stroke(Trace.Segment(X(h), 26, X(h), bottom), Inks.Fine));
            marks.Add(new Lettering(X(h), bottom + 20, $"{h}{(h == Longest ? " h" : "")}", Inks.Note, Anchor.Middle));
        }

        marks.AddRange(packs.SelectMany((p, i) => Row(p, 40 + (i * RowHeight))));
        marks.Add(new Stroke(Trace.Segment(X(show), 22, X(show), bottom + 2), Inks.Curve));
        marks.Add(new Lettering(X(show), 15, string.Create(CultureInfo.InvariantCulture, $"the show, {show:0.#} h"), Inks.Ref, Anchor.Middle));
        var spoken = "Hours to half light: " + string.Join("; ", packs.Select(p => $"pack {p.Number} {(p.HoursToDim is { } f ? FigureText.Of(f) : "never")}"));
        return new Drawing(spoken, 0, 0, 620, bottom + 36, 4.6, [new Part(marks.ToItemList())]);
    }

    private static IEnumerable<Mark> Row(PackResult pack, double y)
    {
        var (dim, spoiled) = (pack.HoursToDim?.Value ?? Longest, pack.HoursToSpoiled?.Value ?? Longest);
        yield return new Stroke(Trace.Circle(16, y + 13, 12), Inks.Badge(pack.Number));
        yield return new Lettering(16, y + 17.5, pack.Number.ToString(CultureInfo.InvariantCulture), Inks.Number, Anchor.Middle);
        yield return new Lettering(38, y + 10, pack.Supply.Name ?? $"Pack {pack.Number}", Inks.Heading);
        yield return new Lettering(38, y + 27, pack.Words, Inks.Note);
        yield return new Stroke(Trace.Rectangle(Start, y, Math.Max(2, X(spoiled) - Start), BarHeight), Inks.After);
        yield return new Stroke(Trace.Rectangle(Start, y, Math.Max(2, X(dim) - Start), BarHeight), Inks.Glow);
        yield return new Lettering(Math.Max(Start + 56, X(dim) - 8), y + 18, pack.HoursToDim is { } hours ? FigureText.Of(hours) : "no end", Inks.OnGlow, Anchor.End);
    }

    private static double X(double hours) => Start + (Width * Math.Clamp(Math.Log2(Math.Max(1, hours)) / Math.Log2(Longest), 0, 1));
}
