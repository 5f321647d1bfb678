using System.Globalization;
using SkiaSharp;

namespace Duskwright.Book.Sheets;

/// <summary>Text, rules and tables flowing down pages in millimetres; what does not fit goes on the next page under the same heading.</summary>
internal sealed class PageFlow : IDisposable
{
    internal const float Margin = 15;

    private const float LineGap = 1.35f;
    private const float FootHeight = 8;
    private readonly SKDocument _document;
    private readonly (float Width, float Height) _page;
    private readonly string _town;
    private readonly string _date;
    private SKCanvas? _canvas;
    private string _heading = "";
    private int _pages;
    private float _y;

    internal PageFlow(Stream stream, string town, BookOptions options)
    {
        _page = options.Paper == PaperSize.A4 ? (210f, 297f) : (215.9f, 279.4f);
        _town = town;
        _date = options.Date.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
        var printed = options.Date.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);

        // With 2540 dots an inch Skia keeps the page's size to a hundredth of a millimetre.
        _document = SKDocument.CreatePdf(stream, new SKDocumentPdfMetadata { RasterDpi = 2540, Title = $"{town}, bench book", Creation = printed, Modified = printed });
    }

    internal float Width => _page.Width - (2 * Margin);

    internal float Room => _page.Height - Margin - FootHeight - _y;

    internal void Page(string heading)
    {
        EndPage();
        _heading = heading;
        _pages++;
        _canvas = _document.BeginPage(Points(_page.Width), Points(_page.Height));
        _canvas.Scale(72 / 25.4f);
        _y = Margin;
        Text(Face.Speaks, 20, heading);
        Rule(0.35f);
        _y += 3;
    }

    internal void Text(SKTypeface face, float points, string words, float indent = 0)
    {
        using var font = Face.At(face, points);
        foreach (var line in Wrapped(font, words, Width - indent))
        {
            Need(font.Size * LineGap);
            _y += font.Size * LineGap;
            Draw(font, line, Margin + indent, _y - (font.Size * 0.3f));
        }
    }

    internal void Gap(float millimetres) => _y += millimetres;

    internal void Need(float height)
    {
        if (Room < height)
        {
            Page(_heading);
        }
    }

    internal void Table(float[] shares, string[] heads, IEnumerable<string[]> rows)
    {
        Row(shares, heads, Face.Strong);
        Rule(0.25f);
        foreach (var row in rows)
        {
            if (Row(shares, row, Face.Reports))
            {
                Row(shares, heads, Face.Strong);
                Rule(0.25f);
                Row(shares, row, Face.Reports);
            }

            Rule(0.1f);
        }
    }

    /// <summary>A ruler of 60 mm to check the print with a ruler of one's own.</summary>
    internal void CheckRuler()
    {
        Need(16);
        using var pen = Pen(0.25f);
        using var font = Face.At(Face.Reports, 7);
        var top = _y + 4;
        _canvas!.DrawLine(Margin, top, Margin + 60, top, pen);
        for (var mm = 0; mm <= 60; mm++)
        {
            _canvas.DrawLine(Margin + mm, top, Margin + mm, top + (mm % 10 == 0 ? 3.5f : mm % 5 == 0 ? 2.5f : 1.5f), pen);
            if (mm % 10 == 0)
            {
                Draw(font, mm.ToString(CultureInfo.InvariantCulture), Margin + mm + 0.4f, top + 6.5f);
            }
        }

        _y = top + 8;
        Text(Face.Reports, 7.5f, "Lay your own ruler here. If 60 mm is not 60 mm, print again at actual size.");
        _y += 3;
    }

    /// <summary>A label at true size: plus and bar at its left, a strong line and small ones, each cut to the label.</summary>
    internal void Box(float x, float width, float height, string strong, IReadOnlyList<string> lines)
    {
        using var pen = Pen(0.25f);
        _canvas!.DrawRect(Margin + x, _y, width, height, pen);
        _canvas.DrawLine(Margin + x + 5, _y + 4, Margin + x + 5, _y + height - 4, pen);
        using var plus = Face.At(Face.Strong, 9);
        Draw(plus, "+", Margin + x + 1.6f, _y + (height / 2) + 1);
        using var bold = Face.At(Face.Speaks, 10);
        Draw(bold, strong, Margin + x + 7, _y + 5);
        using var small = Face.At(Face.Reports, 7);
        for (var i = 0; i < lines.Count; i++)
        {
            Draw(small, Wrapped(small, lines[i], width - 9).First(), Margin + x + 7, _y + 8.6f + (i * 3.2f));
        }
    }

    public void Dispose()
    {
        EndPage();
        _document.Close();
        _document.Dispose();
    }

    private static float Points(float millimetres) => millimetres * 72 / 25.4f;

    private static SKPaint Pen(float weight) => new() { Style = SKPaintStyle.Stroke, StrokeWidth = weight, Color = SKColors.Black, IsAntialias = true };

    private static IEnumerable<string> Wrapped(SKFont font, string words, float width)
    {
        var line = "";
        foreach (var word in words.Split(' ').SelectMany(w => Broken(font, w, width)))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && font.MeasureText(longer) > width)
            {
                yield return line;
                line = word;
            }
            else
            {
                line = longer;
            }
        }

        yield return line;
    }

    // A word wider than its column is broken, so that it never lies over its neighbour.
    private static IEnumerable<string> Broken(SKFont font, string word, float width)
    {
        while (font.MeasureText(word) > width && word.Length > 1)
        {
            var fits = Enumerable.Range(1, word.Length - 1).TakeWhile(n => font.MeasureText(word[..n]) <= width).DefaultIfEmpty(1).Last();
            if (fits > 1 && char.IsHighSurrogate(word[fits - 1]))
            {
                fits--;
            }

            yield return word[..fits];
            word = word[fits..];
        }

        yield return word;
    }

    // True where the row did not fit and a new page was begun instead of drawing it.
    private bool Row(float[] shares, string[] cells, SKTypeface face)
    {
        using var font = Face.At(face, 8.5f);
        const float gutter = 2;
        var texts = cells.Select((cell, i) => Wrapped(font, cell, (shares[i] * Width) - gutter).ToList()).ToList();
        var height = (texts.Max(t => t.Count) * font.Size * LineGap) + 1.4f;
        if (Room < height)
        {
            Page(_heading);
            return true;
        }

        var x = Margin;
        for (var i = 0; i < cells.Length; i++)
        {
            for (var l = 0; l < texts[i].Count; l++)
            {
                Draw(font, texts[i][l], x, _y + ((l + 1) * font.Size * LineGap));
            }

            x += shares[i] * Width;
        }

        _y += height;
        return false;
    }

    private void Rule(float weight)
    {
        using var pen = Pen(weight);
        _y += 0.8f;
        _canvas!.DrawLine(Margin, _y, Margin + Width, _y, pen);
    }

    private void Draw(SKFont font, string text, float x, float y)
    {
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true };

        // The thin space of figures has no shape in every face; a plain one prints alike.
        _canvas!.DrawText(text.Replace('\u2009', ' '), x, y, SKTextAlign.Left, font, ink);
    }

    private void EndPage()
    {
        if (_canvas is null)
        {
            return;
        }

        using var font = Face.At(Face.Reports, 7.5f);
        Draw(font, $"{_town}, bench book · {_date} · sheet {_pages} · guides, does not certify", Margin, _page.Height - Margin + 4);
        _document.EndPage();
        _canvas = null;
    }
}
