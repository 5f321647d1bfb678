using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Study.Lists;

namespace Duskwright.Book.Plans;

/// <summary>A label that is folded over its pair and stuck together behind it, at true size: the same words on both faces.</summary>
public static class FlagLabel
{
    /// <summary>Width before folding, mm.</summary>
    public const double Width = 68;

    /// <summary>Height, mm.</summary>
    public const double Height = 14;

    // Clear of words on both sides of the fold: the pair lies there.
    private const double Clear = 3;

    /// <summary>Draws a label.</summary>
    /// <param name="label">What stands on it.</param>
    /// <returns>The drawing.</returns>
    public static Drawing Of(LabelRow label) => new(
        $"Label {label.Code} {label.Terminal}, {label.Name}",
        0,
        0,
        Width,
        Height,
        1,
        [
            new Part(
            [
                new Stroke(Trace.Rectangle(0, 0, Width, Height), Inks.Hidden),
                new Stroke(Trace.Segment(Width / 2, 0, Width / 2, Height), Inks.Fold),
                .. Face(label, 0),
                .. Face(label, (Width / 2) + Clear),
            ]),
        ]);

    private static List<Mark> Face(LabelRow label, double left)
    {
        const double room = (Width / 2) - Clear;
        List<Mark> marks =
        [
            new Lettering(left + 2, 7, Fitting.Short(label.Code, Inks.Letter, room * 0.42), Inks.Letter),
            new Lettering(left + room - 9, 6.4, label.Terminal, Inks.Ref, Anchor.End),
            .. Fitting.Lines(label.Name, Inks.Tiny, room - 3, 1).Select(l => new Lettering(left + 2, 10.4, l, Inks.Tiny)),
            .. Fitting.Lines(label.Detail, Inks.Tiny, room - 3, 1).Select(l => new Lettering(left + 2, 12.9, l, Inks.Tiny)),
        ];
        if (label.Circuit > 0)
        {
            marks.Add(new Stroke(Trace.Circle(left + room - 4.5, 5, 2.6), Inks.Badge(label.Circuit)));
            marks.Add(new Lettering(left + room - 4.5, 5.95, label.Circuit.ToString(CultureInfo.InvariantCulture), Inks.Number, Anchor.Middle));
        }

        return marks;
    }
}
