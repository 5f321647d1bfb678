using Duskwright.Book.Drawings;
using Duskwright.Book.Sheets;
using Duskwright.Plan;
using SkiaSharp;

namespace Duskwright.Book.Plans;

/// <summary>One line of a label on a plan.</summary>
/// <param name="Text">The words.</param>
/// <param name="Hand">How they are lettered.</param>
internal sealed record Label(string Text, Hand Hand);

/// <summary>Puts the names of houses where they cover nothing: below, above, beside or at a corner, each in turn, the first place that is free.</summary>
internal static class Labels
{
    private const double LineHeight = 1.05;
    private const double Gap = 0.5;

    /// <summary>The words of each house, a part for each, so that one that moves leaves the others as they are.</summary>
    internal static IEnumerable<Part> Of(IReadOnlyList<(SKRect House, IReadOnlyList<Label> Lines)> houses, IEnumerable<SKRect> taken, SKRect board, double pen)
    {
        var busy = houses.Select(h => h.House).Concat(taken).ToList();
        foreach (var (house, lines) in houses.Where(h => h.Lines.Count > 0))
        {
            var width = lines.Max(l => Width(l, pen));
            var height = (float)lines.Sum(l => l.Hand.Size * LineHeight * pen);
            var gap = (float)(Gap * pen);
            SKPoint[] places =
            [
                new(house.MidX - (width / 2), house.Bottom + gap),
                new(house.MidX - (width / 2), house.Top - gap - height),
                new(house.Right + gap, house.MidY - (height / 2)),
                new(house.Left - gap - width, house.MidY - (height / 2)),
                new(house.Right + gap, house.Bottom + gap),
                new(house.Left - gap - width, house.Bottom + gap),
                new(house.Right + gap, house.Top - gap - height),
                new(house.Left - gap - width, house.Top - gap - height),
            ];
            var boxes = places.Select(p => SKRect.Create(p, new SKSize(width, height))).ToList();
            var reach = boxes.Aggregate(SKRect.Union);
            var near = busy.Where(t => t.Left < reach.Right && reach.Left < t.Right && t.Top < reach.Bottom && reach.Top < t.Bottom).ToList();
            var box = boxes.OrderBy(b => near.Sum(t => Shared(b, t)) + (b.Width * b.Height) - Shared(b, board)).First();
            busy.Add(box);
            List<Mark> marks = [];
            var y = (double)box.Top;
            foreach (var line in lines)
            {
                y += line.Hand.Size * LineHeight * pen;
                marks.Add(new Lettering(box.MidX, y - (line.Hand.Size * 0.22 * pen), line.Text, line.Hand, Anchor.Middle));
            }

            yield return new Part(marks.ToItemList());
        }
    }

    internal static float Width(Label label, double pen)
    {
        using var font = Face.Sized(Face.Of(label.Hand.Face), (float)(label.Hand.Size * pen));
        return font.MeasureText(Face.Plain(label.Text));
    }

    internal static float Shared(SKRect a, SKRect b) => SKRect.Intersect(a, b) is { IsEmpty: false } shared ? shared.Width * shared.Height : 0;
}
