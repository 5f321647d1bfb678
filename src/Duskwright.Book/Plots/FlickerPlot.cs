using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Study.Results;

namespace Duskwright.Book.Plots;

/// <summary>How a window's brightness jumps while its lamps flicker.</summary>
public static class FlickerPlot
{
    private const double Left = 14;
    private const double Width = 272;
    private const double Base = 96;
    private const double Height = 76;

    /// <summary>Draws the plot.</summary>
    /// <param name="flicker">A window with flickering lamps behind it.</param>
    /// <returns>The drawing.</returns>
    public static Drawing Of(PaneFlicker flicker)
    {
        var most = flicker.Steps.Max(s => s.Luminance);
        double X(double seconds) => Left + (Width * seconds / PaneFlicker.Seconds);
        double Y(double luminance) => Base - (Height * luminance / most);
        List<(double X, double Y)> course = [];
        foreach (var (step, until) in flicker.Steps.Zip(flicker.Steps.Skip(1).Select(s => s.At).Append(PaneFlicker.Seconds)))
        {
            course.Add((X(step.At), Y(step.Luminance)));
            course.Add((X(until), Y(step.Luminance)));
        }

        List<Mark> marks =
        [
            new Stroke(Trace.Segment(Left, Y(flicker.Pane.Luminance.Value), Left + Width, Y(flicker.Pane.Luminance.Value)), Inks.Limit),
            new Stroke(Trace.Chain(course), Inks.Curve),
            new Stroke(Trace.Segment(Left, Base, Left + Width, Base), Inks.Fine),
            .. Enumerable.Range(0, (int)PaneFlicker.Seconds + 1).Select(s => new Lettering(X(s), Base + 20, s.ToString(CultureInfo.InvariantCulture) + " s", Inks.Note, Anchor.Middle)),
        ];
        return new Drawing("Three seconds of the window while its lamps flicker; the dashed line is its mean", 0, 0, 300, 124, 4.6, [new Part(marks.ToItemList())]);
    }
}
