using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Study.Lists;

namespace Duskwright.Book.Plans;

/// <summary>A label that is folded over its pair and stuck together behind it, at true size: the same on both faces.</summary>
public static class FlagLabel
{
    /// <summary>Width before folding, mm.</summary>
    public const double Width = 68;

    /// <summary>Width before folding of a label with a code for the phone on each face, mm.</summary>
    public const double WidthWithCode = 88;

    /// <summary>Height, mm.</summary>
    public const double Height = 14;

    /// <summary>Width and height of the code, its quiet zone included, mm.</summary>
    public const double CodeSize = 13.4;

    // Clear of words on both sides of the fold: the pair lies there.
    private const double Clear = 3;

    /// <summary>Draws a label.</summary>
    /// <param name="label">What stands on it.</param>
    /// <param name="address">The house's page, for the camera of a phone; none for a label of words alone.</param>
    /// <returns>The drawing.</returns>
    public static Drawing Of(LabelRow label, string? address = null)
    {
        var width = address is null ? Width : WidthWithCode;
        return new(
            $"Label {label.Code} {label.Terminal}, {label.Name}",
            0,
            0,
            width,
            Height,
            1,
            [
                new Part(
                [
                    new Stroke(Trace.Rectangle(0, 0, width, Height), Inks.Hidden),
                    new Stroke(Trace.Segment(width / 2, 0, width / 2, Height), Inks.Fold),
                    .. Face(label, address, 0, width),
                    .. Face(label, address, (width / 2) + Clear, width),
                ]),
            ]);
    }

    private static List<Mark> Face(LabelRow label, string? address, double left, double width)
    {
        var room = (width / 2) - Clear - (address is null ? 0 : CodeSize);
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

        if (address is not null)
        {
            marks.Add(new Stroke(QrCode.Path(address, left + room, (Height - CodeSize) / 2, CodeSize), Inks.Solid));
        }

        return marks;
    }
}
