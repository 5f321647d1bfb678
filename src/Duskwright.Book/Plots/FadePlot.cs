using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Study.Results;

namespace Duskwright.Book.Plots;

/// <summary>How the worst window of a pack fades over the show, as lightness.</summary>
public static class FadePlot
{
    private const double Left = 40;
    private const double Width = 500;
    private const double Base = 216;
    private const double Height = 190;
    private const double Darkest = 30;
    private const int Samples = 60;

    /// <summary>Draws the plot.</summary>
    /// <param name="pack">A pack with a fade.</param>
    /// <param name="hours">Length of the show, h, more than 0.</param>
    /// <param name="hour">The hour that is marked; none on paper.</param>
    /// <returns>The drawing.</returns>
    public static Drawing Of(PackResult pack, double hours, double? hour)
    {
        var fade = pack.Fade ?? throw new ArgumentException($"Pack {pack.Number} lights nothing, so nothing fades.", nameof(pack));
        double X(double h) => Left + (Width * h / hours);
        double Worst(double h) => fade.At(fade.WorstLightness, h);
        List<Mark> marks = [];
        foreach (var (lightness, words) in ((double, string)[])[(100, "100 fresh"), (76, "76 half light: dim"), (64, "64 a third: spoiled")])
        {
            marks.Add(new Stroke(Trace.Segment(Left, Y(lightness), Left + Width, Y(lightness)), lightness == 100 ? Inks.Fine : Inks.Limit));

            // The curve falls from the left top: below their lines at the left the limits' words are clear of it, and the fresh one's at the right end.
            marks.Add(lightness == 100 ? new Lettering(Left + Width, Y(lightness) - 4, words, Inks.Note, Anchor.End) : new Lettering(Left + 6, Y(lightness) + 13, words, Inks.Note));
        }

        marks.Add(new Stroke(Trace.Chain(Enumerable.Range(0, Samples + 1).Select(i => hours * i / Samples).Select(h => (X(h), Y(Worst(h))))), Inks.Curve));
        marks.Add(new Stroke(Trace.Segment(Left, Base, Left + Width, Base), Inks.Fine));
        for (var h = 0; h <= hours; h += Math.Max(1, (int)hours / 8))
        {
            marks.Add(new Lettering(X(h), Base + 20, h.ToString(CultureInfo.InvariantCulture), Inks.Note, Anchor.Middle));
        }

        if (hour is { } at)
        {
            marks.Add(new Stroke(Trace.Segment(X(at), 20, X(at), Base), Inks.Now));
            marks.Add(new Stroke(Trace.Circle(X(at), Y(Worst(at)), 6), Inks.Glow));

            // Above and to the right, or below and to the left: on those sides a falling curve is not.
            var late = at > hours / 2;
            marks.Add(new Lettering(X(at) + (late ? -10 : 10), Math.Min(Base - 6, Y(Worst(at)) + (late ? 24 : -8)), $"now, L* {Worst(at).ToString("0", CultureInfo.InvariantCulture)}", Inks.Said, late ? Anchor.End : Anchor.Start));
        }

        return new Drawing($"The worst window of pack {pack.Number} over the show, as lightness", 0, 0, 560, 250, 4.6, [new Part(marks.ToItemList())]);
    }

    private static double Y(double lightness) => Base - (Height * Math.Clamp((lightness - Darkest) / (100 - Darkest), 0, 1));
}
