using System.Globalization;
using System.Net;
using System.Text;
using Duskwright.Plan;

namespace Duskwright.Book.Drawings;

/// <summary>Writes the marks of one part as SVG for the screen; inks and hands are classes, so that paper turns to dusk by stylesheet alone.</summary>
public static class SvgFragment
{
    /// <summary>The marks of a part.</summary>
    /// <param name="part">The part.</param>
    /// <returns>SVG elements; words are escaped.</returns>
    public static string Of(Part part)
    {
        var text = new StringBuilder();
        if (part.Words is { } words && part.Key is null)
        {
            text.Append("<title>").Append(WebUtility.HtmlEncode(words)).Append("</title>");
        }

        Write(text, part.Marks);
        return text.ToString();
    }

    private static void Write(StringBuilder text, ItemList<Mark> marks)
    {
        foreach (var mark in marks)
        {
            switch (mark)
            {
                case Stroke stroke:
                    text.Append("<path class=\"i-").Append(stroke.Ink.Name).Append("\" d=\"").Append(stroke.Path).Append('"');
                    if (stroke.Width is { } width)
                    {
                        text.Append(CultureInfo.InvariantCulture, $" style=\"stroke-width:{Trace.N(width)}px\"");
                    }
                    else if (stroke.Ink.Fill == Tone.Lit)
                    {
                        text.Append(CultureInfo.InvariantCulture, $" style=\"--lit:{Trace.N(stroke.Lit)}\"");
                    }

                    text.Append("/>");
                    break;
                case Lettering words:

                    // Each in a group and on a line of its own, so that a screen reader keeps the words apart.
                    var anchor = words.Anchor switch { Anchor.Middle => " text-anchor=\"middle\"", Anchor.End => " text-anchor=\"end\"", _ => "" };
                    text.Append(CultureInfo.InvariantCulture, $"<g><text class=\"h-{words.Hand.Name}\" x=\"{Trace.N(words.X)}\" y=\"{Trace.N(words.Y)}\"{anchor}>{WebUtility.HtmlEncode(words.Text)}</text></g>\n");
                    break;
                case Halo halo:
                    text.Append(CultureInfo.InvariantCulture, $"<circle class=\"halo\" cx=\"{Trace.N(halo.X)}\" cy=\"{Trace.N(halo.Y)}\" r=\"{Trace.N(halo.Radius)}\" opacity=\"{Trace.N(halo.Strength)}\"/>");
                    break;
                case Underlay picture:
                    text.Append(CultureInfo.InvariantCulture, $"<image class=\"underlay\" href=\"{WebUtility.HtmlEncode(picture.Address)}\" x=\"{Trace.N(picture.X)}\" y=\"{Trace.N(picture.Y)}\" width=\"{Trace.N(picture.Width)}\" height=\"{Trace.N(picture.Height)}\" preserveAspectRatio=\"none\"/>");
                    break;
                case Placed placed:
                    text.Append(CultureInfo.InvariantCulture, $"<g transform=\"translate({Trace.N(placed.X)} {Trace.N(placed.Y)}) rotate({Trace.N(placed.Turn)})\">");
                    Write(text, placed.Marks);
                    text.Append("</g>");
                    break;
            }
        }
    }
}
