using System.Globalization;
using System.Net;
using System.Text;
using Duskwright.Book.Sheets;
using Duskwright.Plan;
using SkiaSharp;

namespace Duskwright.Book.Drawings;

/// <summary>Writes a drawing as an SVG file of its own, in millimetres; words are outlines, so that a cutter or any viewer shows them alike.</summary>
public static class SvgFile
{
    /// <summary>The file.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="palette">Its colours.</param>
    /// <returns>SVG text; the same drawing gives the same text.</returns>
    public static string Of(Drawing drawing, Palette palette)
    {
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{Trace.N(drawing.Width / drawing.Pen)}mm\" height=\"{Trace.N(drawing.Height / drawing.Pen)}mm\" viewBox=\"{Trace.N(drawing.Left)} {Trace.N(drawing.Top)} {Trace.N(drawing.Width)} {Trace.N(drawing.Height)}\">\n<title>{WebUtility.HtmlEncode(drawing.Title)}</title>\n");
        foreach (var (part, i) in drawing.Parts.Select((p, i) => (p, i)))
        {
            var clip = "";
            if (part.Clip is { } edge)
            {
                svg.Append(CultureInfo.InvariantCulture, $"<clipPath id=\"cut{i}\"><path d=\"{edge}\"/></clipPath>");
                clip = $" clip-path=\"url(#cut{i})\"";
            }

            svg.Append(CultureInfo.InvariantCulture, $"<g{clip}>");
            if (part.Words is { } words)
            {
                svg.Append(CultureInfo.InvariantCulture, $"<title>{WebUtility.HtmlEncode(words)}</title>");
            }

            Write(svg, part.Marks, palette, drawing.Pen);
            svg.Append("</g>\n");
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void Write(StringBuilder svg, ItemList<Mark> marks, Palette palette, double pen)
    {
        foreach (var mark in marks)
        {
            switch (mark)
            {
                case Stroke stroke:
                    var ink = stroke.Ink;
                    svg.Append(CultureInfo.InvariantCulture, $"<path d=\"{stroke.Path}\" fill=\"{Colour(palette, ink.Fill, stroke.Lit)}\"");
                    if (ink.Line != Tone.None)
                    {
                        svg.Append(CultureInfo.InvariantCulture, $" stroke=\"{Colour(palette, ink.Line, stroke.Lit)}\" stroke-width=\"{Trace.N(stroke.Width ?? ink.Weight * pen)}\" stroke-linejoin=\"round\"");
                    }

                    if (ink.Dash.Count > 0)
                    {
                        svg.Append(" stroke-dasharray=\"").AppendJoin(' ', ink.Dash.Select(d => Trace.N(d * pen))).Append('"');
                    }

                    var opacity = ink.Opacity * (ink.Fill == Tone.Shade ? palette.Of(Tone.Shade).Alpha / 255.0 : 1);
                    svg.Append(opacity < 1 ? string.Create(CultureInfo.InvariantCulture, $" opacity=\"{Trace.N(opacity)}\"/>") : "/>");
                    break;
                case Lettering words:
                    using (var font = Face.Sized(Face.Of(words.Hand.Face), (float)(words.Hand.Size * pen)))
                    {
                        var text = Face.Plain(words.Text);
                        using var outline = font.GetTextPath(text, new SKPoint((float)words.X - (CanvasWriter.Shift(words.Anchor) * font.MeasureText(text)), (float)words.Y));
                        var behind = words.Hand.Behind == Tone.None ? "" : $" paint-order=\"stroke\" stroke=\"{Colour(palette, words.Hand.Behind, 1)}\" stroke-width=\"{Trace.N(0.9 * pen)}\" stroke-linejoin=\"round\"";
                        svg.Append(CultureInfo.InvariantCulture, $"<path aria-label=\"{WebUtility.HtmlEncode(words.Text)}\" d=\"{outline.ToSvgPathData()}\" fill=\"{Colour(palette, words.Hand.Tone, 1)}\"{behind}/>");
                    }

                    break;
                case Placed placed:
                    svg.Append(CultureInfo.InvariantCulture, $"<g transform=\"translate({Trace.N(placed.X)} {Trace.N(placed.Y)}) rotate({Trace.N(placed.Turn)})\">");
                    Write(svg, placed.Marks, palette, pen);
                    svg.Append("</g>");
                    break;
                case Halo or Underlay:
                    break;
            }
        }
    }

    private static string Colour(Palette palette, Tone tone, double lit)
    {
        if (tone == Tone.None)
        {
            return "none";
        }

        var colour = palette.Of(tone, lit);
        return $"#{colour.Red:X2}{colour.Green:X2}{colour.Blue:X2}";
    }
}
