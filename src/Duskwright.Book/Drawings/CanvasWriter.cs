using Duskwright.Book.Sheets;
using Duskwright.Plan;
using SkiaSharp;

namespace Duskwright.Book.Drawings;

/// <summary>Draws on a canvas whose unit is the millimetre: the pages of a PDF, or a bitmap.</summary>
internal static class CanvasWriter
{
    // So far may a halo's edge lie from where it should, mm of paper: a dot of a printer with 600 dots an inch.
    private const double HaloSlack = 25.4 / 600;

    /// <summary>Draws with the frame's left top corner at a place, one millimetre of paper to <see cref="Drawing.Pen"/> units.</summary>
    internal static void Write(SKCanvas canvas, Drawing drawing, Palette palette, float x, float y)
    {
        canvas.Save();
        canvas.Translate(x, y);
        canvas.Scale((float)(1 / drawing.Pen));
        canvas.Translate((float)-drawing.Left, (float)-drawing.Top);
        foreach (var part in drawing.Parts)
        {
            canvas.Save();
            if (part.Clip is { } clip)
            {
                using var edge = SKPath.ParseSvgPathData(clip);
                canvas.ClipPath(edge, SKClipOperation.Intersect, antialias: true);
            }

            Write(canvas, part.Marks, palette, drawing.Pen);
            canvas.Restore();
        }

        canvas.Restore();
    }

    private static void Write(SKCanvas canvas, ItemList<Mark> marks, Palette palette, double pen)
    {
        foreach (var mark in marks)
        {
            switch (mark)
            {
                case Stroke stroke:
                    Write(canvas, stroke, palette, pen);
                    break;
                case Lettering words:
                    Write(canvas, words, palette, pen);
                    break;
                case Placed placed:
                    canvas.Save();
                    canvas.Translate((float)placed.X, (float)placed.Y);
                    canvas.RotateDegrees((float)placed.Turn);
                    Write(canvas, placed.Marks, palette, pen);
                    canvas.Restore();
                    break;
                case Halo or Underlay:
                    // Paper is drawn by day, and without the photograph it was drawn over.
                    break;
            }
        }
    }

    private static void Write(SKCanvas canvas, Stroke stroke, Palette palette, double pen)
    {
        using var path = SKPath.ParseSvgPathData(stroke.Path);
        var ink = stroke.Ink;
        using var paint = new SKPaint { IsAntialias = true, StrokeJoin = SKStrokeJoin.Round };
        if (ink.Fill != Tone.None)
        {
            paint.Color = Faded(palette.Of(ink.Fill, stroke.Lit), ink.Opacity);
            canvas.DrawPath(path, paint);
        }

        if (ink.Line == Tone.None)
        {
            return;
        }

        paint.Style = SKPaintStyle.Stroke;
        paint.Color = Faded(palette.Of(ink.Line, stroke.Lit), ink.Opacity);
        paint.StrokeWidth = (float)(stroke.Width ?? ink.Weight * pen);
        if (ink.Dash.Count == 0)
        {
            canvas.DrawPath(path, paint);
            return;
        }

        using var dashes = Dashes(path, [.. ink.Dash.Select(d => (float)(d * pen))]);
        canvas.DrawPath(dashes, paint);
    }

    // The canvas would turn a dashed line into little filled boxes; a cutter or a reader wants lines.
    private static SKPath Dashes(SKPath path, float[] dash)
    {
        using var builder = new SKPathBuilder();
        using var measure = new SKPathMeasure(path);
        do
        {
            var at = 0f;
            for (var i = 0; at < measure.Length; i++)
            {
                var end = Math.Min(measure.Length, at + dash[i % dash.Length]);
                if (i % 2 == 0)
                {
                    using var segment = measure.GetSegment(at, end, startWithMoveTo: true);
                    if (segment is not null)
                    {
                        builder.AddPath(segment);
                    }
                }

                at = end;
            }
        }
        while (measure.NextContour());
        return builder.Detach();
    }

    private static void Write(SKCanvas canvas, Lettering words, Palette palette, double pen)
    {
        using var font = Face.Sized(Face.Of(words.Hand.Face), (float)(words.Hand.Size * pen));
        var text = Face.Plain(words.Text);
        var align = words.Anchor switch { Anchor.Middle => SKTextAlign.Center, Anchor.End => SKTextAlign.Right, _ => SKTextAlign.Left };
        using var paint = new SKPaint { IsAntialias = true };
        if (words.Hand.Behind != Tone.None)
        {
            // Drawn as outlines, so that the words stand once in the file.
            using var shapes = font.GetTextPath(text, new SKPoint((float)words.X - (Shift(words.Anchor) * font.MeasureText(text)), (float)words.Y));
            using var outline = Straightened(shapes, (float)(HaloSlack * pen));
            paint.Style = SKPaintStyle.Stroke;
            paint.StrokeJoin = SKStrokeJoin.Round;
            paint.StrokeWidth = (float)(0.9 * pen);
            paint.Color = palette.Of(words.Hand.Behind);
            canvas.DrawPath(outline, paint);
        }

        paint.Style = SKPaintStyle.Fill;
        paint.Color = palette.Of(words.Hand.Tone);
        canvas.DrawText(text, (float)words.X, (float)words.Y, align, font, paint);
    }

    // A halo in straight pieces, none farther from its curve than the slack: its curves were two thirds of a printed book.
    private static SKPath Straightened(SKPath path, float slack)
    {
        using var builder = new SKPathBuilder();
        using var pieces = path.CreateRawIterator();
        Span<SKPoint> p = stackalloc SKPoint[4];
        for (var verb = pieces.Next(p); verb != SKPathVerb.Done; verb = pieces.Next(p))
        {
            switch (verb)
            {
                case SKPathVerb.Move:
                    builder.MoveTo(p[0]);
                    break;
                case SKPathVerb.Line:
                    builder.LineTo(p[1]);
                    break;
                case SKPathVerb.Quad:
                    // In n pieces a parabola lies at most |p0 - 2 p1 + p2| / (4 n²) from its chords.
                    var bend = (p[0] + p[2]) - (p[1] + p[1]);
                    var count = (int)Math.Ceiling(Math.Sqrt(bend.Length / (4 * slack)));
                    for (var i = 1; i < count; i++)
                    {
                        var (t, u) = ((float)i / count, 1 - ((float)i / count));
                        builder.LineTo((u * u * p[0].X) + (2 * u * t * p[1].X) + (t * t * p[2].X), (u * u * p[0].Y) + (2 * u * t * p[1].Y) + (t * t * p[2].Y));
                    }

                    builder.LineTo(p[2]);
                    break;
                case SKPathVerb.Close:
                    builder.Close();
                    break;
                default:
                    throw new InvalidOperationException($"A face of the book has a {verb}; those of its kind are of lines and parabolas.");
            }
        }

        return builder.Detach();
    }

    internal static float Shift(Anchor anchor) => anchor switch { Anchor.Middle => 0.5f, Anchor.End => 1, _ => 0 };

    private static SKColor Faded(SKColor colour, double opacity) => colour.WithAlpha((byte)Math.Round(colour.Alpha * opacity));
}
