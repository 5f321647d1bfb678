using SkiaSharp;

namespace Duskwright.Book.Drawings;

/// <summary>Writes a drawing as a bitmap.</summary>
public static class PngFile
{
    /// <summary>The file.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="palette">Its colours.</param>
    /// <param name="dotsPerMillimetre">Resolution, more than 0; 11.8 is 300 dots an inch.</param>
    /// <param name="stream">Where to write.</param>
    public static void Write(Drawing drawing, Palette palette, double dotsPerMillimetre, Stream stream)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dotsPerMillimetre);
        var scale = dotsPerMillimetre / drawing.Pen;
        using var bitmap = new SKBitmap((int)Math.Ceiling(drawing.Width * scale), (int)Math.Ceiling(drawing.Height * scale));
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(palette.Of(Tone.Ground));
        canvas.Scale((float)dotsPerMillimetre);
        CanvasWriter.Write(canvas, drawing, palette, 0, 0);
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        data.SaveTo(stream);
    }
}
