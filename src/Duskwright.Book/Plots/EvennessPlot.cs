using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Study;

namespace Duskwright.Book.Plots;

/// <summary>How even the lamps of each pack are: one dot a lamp, lightness against the brightest of its kind on the pack.</summary>
public static class EvennessPlot
{
    private const double Left = 40;
    private const double Width = 500;
    private const double Darkest = 78;
    private const double SeenBelow = 95;
    private const double RowHeight = 24;

    /// <summary>Draws the plot.</summary>
    /// <param name="study">The town's results.</param>
    /// <returns>The drawing.</returns>
    public static Drawing Of(TownStudy study)
    {
        var bottom = (study.Packs.Count * RowHeight) + 8;
        List<Part> parts = [new Part([new Stroke(Trace.Rectangle(X(SeenBelow), 0, X(100) - X(SeenBelow) + 8, bottom), Inks.Unseen)])];
        foreach (var (pack, i) in study.Packs.Select((p, i) => (p, i)))
        {
            var y = (i * RowHeight) + 16;
            parts.Add(new Part(
            [
                new Stroke(Trace.Segment(Left, y, Left + Width, y), Inks.Fine),
                new Stroke(Trace.Circle(16, y, 10), Inks.Badge(pack.Number)),
                new Lettering(16, y + 4.4, pack.Number.ToString(CultureInfo.InvariantCulture), Inks.Number, Anchor.Middle),
            ]));
            parts.AddRange(
                from lamp in study.Lamps
                where lamp.Supply == pack.Supply.Id && lamp.Evenness is not null
                let seen = lamp.Evenness < SeenBelow
                select new Part([new Stroke(Trace.Circle(X(lamp.Evenness!.Value), y, seen ? 5 : 3), seen ? Inks.Odd : Inks.Dot)]) { Words = $"{lamp.Building} {lamp.Name}" });
        }

        parts.Add(new Part(((int[])[80, 85, 90, 95, 100]).Select(Mark (t) => new Lettering(X(t), bottom + 20, t.ToString(CultureInfo.InvariantCulture), Inks.Note, Anchor.Middle)).ToItemList()));
        return new Drawing("Evenness of the lamps", 0, 0, 560, bottom + 26, 4.6, parts.ToItemList());
    }

    private static double X(double lightness) => Left + (Width * Math.Clamp((lightness - Darkest) / (100 - Darkest), 0, 1));
}
