using Duskwright.Book.Sheets;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study;
using UglyToad.PdfPig.Core;

namespace Duskwright.Book.Tests.Paper;

/// <summary>What comes out of the printer: the book rendered at 600 dots an inch and read by a second reader.</summary>
public sealed class TrueSizeTests
{
    private const double MillimetresPerPoint = 25.4 / 72;
    private const double Tolerance = 0.1;

    // The Chandlery of the example: its shop floor is 62 mm wide and 40 mm high with flaps of 9 mm; lamp L1 of 3 mm in a hole of 3.1 mm, 18 mm from the left and 16 mm up.
    [Fact]
    public void A_rendered_lamp_card_has_its_hole_where_the_plan_has_the_lamp()
    {
        var (number, card) = PrintedSaltmarrow.Pages().Where(p => p.Page.Text.StartsWith("Chandlery", StringComparison.Ordinal))
            .SelectMany(p => Boxes(p, 62, 58).Select(b => (p.Page.Number, b))).First();
        var page = Poppler.Page(PrintedSaltmarrow.File(), number);
        var (left, right) = (page.UprightNear(card.Left, 0.5, card.Bottom + 28, card.Bottom + 45), page.UprightNear(card.Right, 0.5, card.Bottom + 28, card.Bottom + 45));
        var foot = page.LevelNear(card.Bottom, 0.3, card.Left + 5, card.Left + 55);
        Assert.Equal(62, right - left, Tolerance);
        var (x, y, radius) = page.RingNear(left + 18, foot + 9 + 16, 1.55);
        Assert.Equal(18, x - left, Tolerance);
        Assert.Equal(9 + 16, y - foot, Tolerance);
        Assert.Equal(1.55, radius, Tolerance);
        CheckRuler(page, number);
    }

    [Fact]
    public void A_rendered_tile_of_the_board_has_its_hole_as_far_from_the_edges_as_the_board()
    {
        var town = new Town
        {
            Name = "Fen End",
            Board = new Board { Width = Length.FromMillimetres(150), Depth = Length.FromMillimetres(140), FeedHoles = [new FeedHole { Id = "n", At = Point.At(40, 30), Bore = Length.FromMillimetres(3) }] },
        };
        var file = PrintedSaltmarrow.Bytes(TownStudy.Of(town), new BookOptions(PaperSize.A4, PrintedSaltmarrow.Date) { Choice = BookChoice.Sheet("tiles") });
        var tile = ReadPage.Of(file)[1];
        var edge = Boxes(tile, 150, 140).First();
        var page = Poppler.Page(file, 2);
        var (left, foot) = (page.UprightNear(edge.Left, 0.5, edge.Bottom + 60, edge.Bottom + 100), page.LevelNear(edge.Bottom, 0.5, edge.Left + 60, edge.Left + 100));
        var (x, y, radius) = page.RingNear(left + 40, foot + 30, 1.5);
        Assert.Equal(40, x - left, Tolerance);
        Assert.Equal(30, y - foot, Tolerance);
        Assert.Equal(1.5, radius, Tolerance);
        Assert.Equal(150, page.UprightNear(edge.Right, 0.5, edge.Bottom + 60, edge.Bottom + 100) - left, Tolerance);
        Ruler(page, Boxes(tile, 60, 0).First());
    }

    // What a renderer measures wrong would be seen here: a ring drawn by hand, a tenth off.
    [Fact]
    public void A_ring_that_is_off_is_measured_off()
    {
        const int dots = 200;
        var head = "P5\n200 200\n255\n"u8.ToArray();
        var grey = Enumerable.Range(0, dots * dots).Select(i => (Row: i / dots, Column: i % dots))
            .Select(p => Math.Abs(Math.Sqrt(Math.Pow(p.Column + 0.5 - 104, 2) + Math.Pow(dots - p.Row - 0.5 - 100, 2)) - 60) < 4 ? (byte)0 : (byte)255);
        var page = GreyPage.Read([.. head, .. grey], 1016);
        var (x, y, radius) = page.RingNear(100 / 40.0, 100 / 40.0, 60 / 40.0);
        Assert.Equal(104 / 40.0, x, 0.02);
        Assert.Equal(100 / 40.0, y, 0.02);
        Assert.Equal(1.5, radius, 0.02);
    }

    [Fact]
    public void Both_readers_find_the_same_letters_on_every_page()
    {
        var pages = Poppler.Ask("pdftotext", PrintedSaltmarrow.File(), "-enc", "UTF-8").Split('\f')[..^1];
        var read = PrintedSaltmarrow.Pages();
        Assert.Equal(read.Count, pages.Length);
        Assert.All(read.Zip(pages), page => Assert.Equal(Letters(page.First.Page.Text), Letters(page.Second)));
    }

    [Fact]
    public void Every_font_of_the_book_comes_with_it_as_poppler_sees_it()
    {
        var fonts = Poppler.Ask("pdffonts", PrintedSaltmarrow.File()).Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..];
        Assert.NotEmpty(fonts);

        // Columns from the right: object and generation, unicode, subset, embedded.
        Assert.All(fonts, line => Assert.Equal(["yes", "yes", "yes"], line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[^5..^2]));
    }

    private static string Letters(string text) => string.Concat(text.Where(char.IsLetterOrDigit).Order());

    private static void CheckRuler(GreyPage page, int number) => Ruler(page, Boxes(PrintedSaltmarrow.Pages()[number - 1], 60, 0).First());

    // Only every tenth line of the ruler reaches 2.6 to 3.3 mm down.
    private static void Ruler(GreyPage page, PdfRectangle ruler) =>
        Assert.Equal(60, page.UprightNear(ruler.Right, 0.4, ruler.Bottom - 3.3, ruler.Bottom - 2.6) - page.UprightNear(ruler.Left, 0.4, ruler.Bottom - 3.3, ruler.Bottom - 2.6), Tolerance);

    // In millimetres.
    private static IEnumerable<PdfRectangle> Boxes(ReadPage page, double width, double height) =>
        page.Page.Paths.Select(p => p.GetBoundingRectangle()).OfType<PdfRectangle>()
            .Select(b => new PdfRectangle(b.Left * MillimetresPerPoint, b.Bottom * MillimetresPerPoint, b.Right * MillimetresPerPoint, b.Top * MillimetresPerPoint))
            .Where(b => Math.Abs(b.Width - width) < 0.1 && Math.Abs(b.Height - height) < 0.1);
}
