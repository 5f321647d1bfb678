using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Duskwright.Book.Drawings;
using SkiaSharp;

namespace Duskwright.Book.Sheets;

/// <summary>Text, rules and tables flowing down pages in millimetres; what does not fit goes on the next page under the same heading.</summary>
internal sealed class PageFlow : IDisposable
{
    internal const float Margin = 15;

    internal const float LineGap = 1.35f;
    private const float FootHeight = 8;
    private const float RulerHeight = 12;
    private const int RulerLength = 60;
    private const float HeadingPoints = 20;
    private const float RuleGap = 0.8f;
    private const float BelowRule = 3;
    private const float TablePoints = 8.5f;
    private const float Gutter = 2;
    private readonly SKDocument _document;
    private readonly (float Width, float Height) _upright;
    private readonly string _town;
    private readonly string _date;
    private readonly string _since;
    private readonly IncrementalHash _shown = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private SKCanvas? _canvas;
    private (float Width, float Height) _page;
    private string _heading = "";
    private bool _lying;
    private bool _ruled;
    private float _top;
    private int _pages;
    private float _y;

    internal PageFlow(Stream stream, string town, BookOptions options)
    {
        _upright = Upright(options.Paper);
        _page = _upright;
        _town = town;
        _date = options.Date.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
        _since = options.Since is { } since ? $" · changed since {since.Words}" : "";
        var printed = options.Date.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);

        // With 2540 dots an inch Skia keeps the page's size to a hundredth of a millimetre.
        _document = SKDocument.CreatePdf(stream, new SKDocumentPdfMetadata { RasterDpi = 2540, Title = $"{town}, bench book", Creation = printed, Modified = printed });
    }

    /// <summary>What a page has room for below a heading of one line, mm.</summary>
    internal static (float Width, float Height) Body(PaperSize paper, bool lying, bool ruled)
    {
        var (width, height) = Upright(paper);
        (width, height) = lying ? (height, width) : (width, height);
        using var font = Face.At(Face.Speaks, HeadingPoints);
        return (width - (2 * Margin), height - (2 * Margin) - FootHeight - (ruled ? RulerHeight : 0) - (font.Size * LineGap) - BelowRule - RuleGap);
    }

    /// <summary>What stands on all pages so far, their feet left out, in so many letters.</summary>
    internal string Fingerprint() => Convert.ToHexString(_shown.GetCurrentHash());

    /// <summary>How many pages were begun.</summary>
    internal int Pages => _pages;

    internal float Width => _page.Width - (2 * Margin);

    internal float Room => _page.Height - Margin - FootHeight - (_ruled ? RulerHeight : 0) - _y;

    /// <summary>How far down the page everything so far reaches, mm.</summary>
    internal float Y { get => _y; set => _y = value; }

    /// <summary>Whether nothing stands on the page yet but its heading.</summary>
    internal bool IsFresh => _y <= _top;

    /// <summary>Begins a page; one that is full is followed by another of the same kind.</summary>
    /// <param name="heading">Its heading.</param>
    /// <param name="lying">Whether its long edge lies across.</param>
    /// <param name="ruled">Whether it carries a check ruler, as every page at true size does.</param>
    internal void Page(string heading, bool lying = false, bool ruled = false)
    {
        EndPage();
        (_heading, _lying, _ruled) = (heading, lying, ruled);
        _page = lying ? (_upright.Height, _upright.Width) : _upright;
        _pages++;
        _canvas = _document.BeginPage(Points(_page.Width), Points(_page.Height));
        _canvas.Scale(72 / 25.4f);
        _y = Margin;
        Heading(heading);
        Rule(0.35f);
        _y += BelowRule;
        _top = _y;
    }

    /// <summary>Goes on with another page of the same kind.</summary>
    internal void NewPage() => Page(_heading, _lying, _ruled);

    /// <summary>Draws a picture and leaves the flow where it is.</summary>
    /// <param name="drawing">The picture, one millimetre of paper to each of its pen units.</param>
    /// <param name="x">From the left margin, mm.</param>
    /// <param name="y">From the top of the page, mm.</param>
    internal void Place(Drawing drawing, float x, float y)
    {
        CanvasWriter.Write(_canvas!, drawing, Palette.Paper, Margin + x, y);
        foreach (var part in drawing.Parts)
        {
            Note(SvgFragment.Of(part));
        }
    }

    /// <summary>Draws a picture and goes on below it.</summary>
    /// <param name="drawing">The picture.</param>
    /// <param name="x">From the left margin, mm.</param>
    internal void Picture(Drawing drawing, float x = 0)
    {
        var height = (float)(drawing.Height / drawing.Pen);
        Need(height);
        Place(drawing, x, _y);
        _y += height;
    }

    /// <summary>Words on one line, anywhere, leaving the flow where it is.</summary>
    internal void Words(SKTypeface face, float points, string words, float x, float y)
    {
        using var font = Face.At(face, points);
        Draw(font, words, Margin + x, y);
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
            NewPage();
        }
    }

    internal void Table(float[] shares, string[] heads, IEnumerable<string[]> rows)
    {
        shares = WideEnough(shares, heads);
        Row(shares, heads, Face.Strong);
        Rule(0.25f);
        foreach (var row in rows)
        {
            var rest = Row(shares, row, Face.Reports);
            while (rest is not null)
            {
                NewPage();
                Row(shares, heads, Face.Strong);
                Rule(0.25f);
                rest = Row(shares, rest, Face.Reports);
            }

            Rule(0.1f);
        }
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
        var (text, size) = Fitted(lines, width - 9, height - 6.5f);
        using var small = Face.At(Face.Reports, size);
        foreach (var (line, i) in text.Select((t, i) => (t, i)))
        {
            Draw(small, line, Margin + x + 7, _y + 5.4f + ((i + 1) * small.Size * LineGap));
        }
    }

    public void Dispose()
    {
        EndPage();
        _document.Close();
        _document.Dispose();
        _shown.Dispose();
    }

    // The largest of a few sizes at which everything stands on the label; what is longer still ends in an ellipsis, for all to see.
    private static (IReadOnlyList<string> Lines, float Points) Fitted(IReadOnlyList<string> lines, float width, float height)
    {
        for (var points = 7f; ; points -= 0.5f)
        {
            using var font = Face.At(Face.Reports, points);
            var wrapped = lines.SelectMany(l => Wrapped(font, l, width)).ToList();
            var room = (int)(height / (font.Size * LineGap));
            if (wrapped.Count <= room)
            {
                return (wrapped, points);
            }

            if (points <= 4.5f)
            {
                return ([.. wrapped.Take(room - 1), $"{wrapped[room - 1]} …"], points);
            }
        }
    }

    private static (float Width, float Height) Upright(PaperSize paper) => paper == PaperSize.A4 ? (210f, 297f) : (215.9f, 279.4f);

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

    // No word of a heading is broken: a column that is too narrow for its own takes from those that have room to spare.
    private float[] WideEnough(float[] shares, string[] heads)
    {
        using var font = Face.At(Face.Strong, TablePoints);
        var least = heads.Select(h => (h.Split(' ').Max(w => font.MeasureText(w)) + Gutter + 0.1f) / Width).ToArray();
        var (lacks, spare) = (shares.Zip(least).Sum(c => Math.Max(0, c.Second - c.First)), shares.Zip(least).Sum(c => Math.Max(0, c.First - c.Second)));
        return lacks <= 0 || spare <= lacks ? shares : [.. shares.Zip(least).Select(c => c.First < c.Second ? c.Second : c.First - (lacks * (c.First - c.Second) / spare))];
    }

    // A heading has two lines at most; a longer one ends in an ellipsis, and the lists have the whole of it.
    private void Heading(string heading)
    {
        using var font = Face.At(Face.Speaks, HeadingPoints);
        var lines = Wrapped(font, heading, Width).Take(3).ToList();
        foreach (var (line, i) in lines.Take(2).Select((l, i) => (l, i)))
        {
            _y += font.Size * LineGap;
            Draw(font, i == 1 && lines.Count > 2 ? $"{line[..^1]}…" : line, Margin, _y - (font.Size * 0.3f));
        }
    }

    // Draws what fits and gives back what is left for the next page: the whole row where it would fit on a page of its own.
    private string[]? Row(float[] shares, string[] cells, SKTypeface face)
    {
        using var font = Face.At(face, TablePoints);
        const float below = 1.4f;
        var step = font.Size * LineGap;
        var texts = cells.Select((cell, i) => Wrapped(font, cell, (shares[i] * Width) - Gutter).ToList()).ToList();
        var lines = texts.Max(t => t.Count);
        var drawn = lines;
        if (Room < (lines * step) + below)
        {
            var fits = (int)((Room - below) / step);
            var onFreshPage = (int)((_page.Height - (2 * Margin) - FootHeight - 30) / step);
            drawn = lines > onFreshPage ? Math.Max(0, fits) : 0;
        }

        var x = Margin;
        foreach (var (text, i) in texts.Select((t, i) => (t, i)))
        {
            foreach (var (line, l) in text.Take(drawn).Select((t, l) => (t, l)))
            {
                Draw(font, line, x, _y + ((l + 1) * step));
            }

            x += shares[i] * Width;
        }

        if (drawn > 0)
        {
            _y += (drawn * step) + below;
        }

        return drawn < lines ? [.. texts.Select(t => string.Join(' ', t.Skip(drawn)))] : null;
    }

    private void Rule(float weight)
    {
        using var pen = Pen(weight);
        _y += RuleGap;
        _canvas!.DrawLine(Margin, _y, Margin + Width, _y, pen);
    }

    private void Note(string shown) => _shown.AppendData(Encoding.UTF8.GetBytes(shown));

    private void Draw(SKFont font, string text, float x, float y)
    {
        Note(string.Create(CultureInfo.InvariantCulture, $"{text}|{x:0.0}|{y:0.0}|{font.Size:0.0}\n"));
        Write(font, text, x, y);
    }

    private void Write(SKFont font, string text, float x, float y)
    {
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true };

        _canvas!.DrawText(Face.Plain(text), x, y, SKTextAlign.Left, font, ink);
    }

    // A ruler at the foot of each page at true size, to lay one's own beside.
    private void CheckRuler(float top)
    {
        using var pen = Pen(0.25f);
        using var font = Face.At(Face.Reports, 7);
        _canvas!.DrawLine(Margin, top, Margin + RulerLength, top, pen);
        for (var mm = 0; mm <= RulerLength; mm++)
        {
            _canvas.DrawLine(Margin + mm, top, Margin + mm, top + (mm % 10 == 0 ? 3.5f : mm % 5 == 0 ? 2.5f : 1.5f), pen);
            if (mm % 10 == 0)
            {
                Draw(font, mm.ToString(CultureInfo.InvariantCulture), Margin + mm + 0.4f, top + 6.5f);
            }
        }

        Draw(font, "Lay your own ruler here. If 60 mm is not 60 mm, print again at actual size.", Margin + RulerLength + 6, top + 3.5f);
    }

    private void EndPage()
    {
        if (_canvas is null)
        {
            return;
        }

        using var font = Face.At(Face.Reports, 7.5f);
        Write(font, $"{_town}, bench book · {_date} · sheet {_pages} · guides, does not certify{_since}", Margin, _page.Height - Margin + 4);
        if (_ruled)
        {
            CheckRuler(_page.Height - Margin - RulerHeight - 2);
        }

        _document.EndPage();
        _canvas = null;
    }
}
