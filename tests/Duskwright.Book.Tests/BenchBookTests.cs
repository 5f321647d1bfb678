using Duskwright.Book.Sheets;
using Duskwright.Plan;
using Duskwright.Study;
using Duskwright.Study.Figures;

namespace Duskwright.Book.Tests;

/// <summary>The printed book, read back by a library that did not write it.</summary>
public class BenchBookTests
{
    private const double MillimetresPerPoint = 25.4 / 72;
    private static readonly TownStudy Saltmarrow = PrintedSaltmarrow.Study;
    private static readonly BookOptions Today = new(PaperSize.A4, PrintedSaltmarrow.Date);

    // Source: ISO 216 (210 × 297 mm) and ANSI/ASME Y14.1 size A (8.5 × 11 inches).
    [Theory]
    [InlineData(PaperSize.A4, 210, 297)]
    [InlineData(PaperSize.Letter, 215.9, 279.4)]
    public void Every_page_has_the_papers_size_to_a_tenth_of_a_millimetre(PaperSize paper, double width, double height)
    {
        Assert.All(PrintedSaltmarrow.Pages(paper).Select(p => p.Page), page =>
        {
            // Some sheets lie across.
            Assert.Equal(width, Math.Min(page.Width, page.Height) * MillimetresPerPoint, 0.1);
            Assert.Equal(height, Math.Max(page.Width, page.Height) * MillimetresPerPoint, 0.1);
        });
    }

    [Fact]
    public void Every_building_has_its_sheet_with_text_that_can_be_read()
    {
        var pages = PrintedSaltmarrow.Pages().Select(p => p.Text).ToList();
        Assert.All(Saltmarrow.Buildings, b => Assert.Contains(pages, p => p.StartsWith(b.Building.Name, StringComparison.Ordinal) && p.Contains("Test, and write it down", StringComparison.Ordinal)));
        Assert.All(pages, p => Assert.Contains("Saltmarrow, bench book · 25 November 2026", p, StringComparison.Ordinal));
    }

    [Fact]
    public void What_parts_as_sold_and_shorts_do_is_printed_as_it_was_computed()
    {
        var pages = PrintedSaltmarrow.Pages().Select(p => p.Text).ToList();
        var (sold, shorts) = (pages.Single(p => p.StartsWith("As parts are sold", StringComparison.Ordinal)), pages.Single(p => p.StartsWith("Shorts and fuses", StringComparison.Ordinal)));
        Assert.All(Saltmarrow.Packs, pack =>
        {
            Assert.Contains(Spoken(FigureText.Range(Saltmarrow.Spread(pack.Supply.Id)!.Load)!), sold, StringComparison.Ordinal);
            Assert.Contains(Spoken(FigureText.Of(pack.ShortCircuit!.HotSpot)), shorts, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void No_letter_leaves_the_margins(PaperSize paper)
    {
        var margin = (PageFlow.Margin - 0.5) / MillimetresPerPoint;
        Assert.All(PrintedSaltmarrow.Pages(paper).Select(p => p.Page), page => Assert.All(page.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)), letter =>
            Assert.True(letter.BoundingBox.Left >= margin && letter.BoundingBox.Right <= page.Width - margin, $"page {page.Number}: {letter.Value} at {letter.BoundingBox}")));
    }

    // The name of an embedded subset begins with six capitals and a plus (PDF 1.7, from memory).
    [Fact]
    public void Every_letter_is_of_a_font_that_comes_with_the_book() =>
        Assert.All(PrintedSaltmarrow.Pages().SelectMany(p => p.Page.Letters).Select(l => l.FontName).Distinct(), name => Assert.Matches("^[A-Z]{6}[+]", name));

    [Fact]
    public void The_check_ruler_is_sixty_millimetres_and_a_label_fifty_five_by_eighteen()
    {
        var boxes = PrintedSaltmarrow.Pages().First(p => p.Text.StartsWith("Labels", StringComparison.Ordinal)).Page.Paths
            .Select(path => path.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>().ToList();
        Assert.Contains(boxes, b => Math.Abs((b.Width * MillimetresPerPoint) - 60) < 0.1);
        Assert.Contains(boxes, b => Math.Abs((b.Width * MillimetresPerPoint) - 55) < 0.1 && Math.Abs((b.Height * MillimetresPerPoint) - 18) < 0.1);
    }

    // The Chandlery of the example: 98 mm wide, walls 40 + 24 mm; its shop floor 62 mm wide, lamp L1 of 3 mm in a hole of 3.1 mm, 18 mm from the left and 16 mm up.
    [Fact]
    public void A_wall_and_the_hole_of_a_lamp_are_printed_at_true_size()
    {
        var sheets = PrintedSaltmarrow.Pages().Where(p => p.Text.StartsWith("Chandlery", StringComparison.Ordinal)).Select(p => p.Page).ToList();
        var boxes = sheets.SelectMany(p => p.Paths).Select(path => path.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>().ToList();
        bool Measures(UglyToad.PdfPig.Core.PdfRectangle box, double width, double height) =>
            Math.Abs((box.Width * MillimetresPerPoint) - width) < 0.1 && Math.Abs((box.Height * MillimetresPerPoint) - height) < 0.1;
        Assert.Contains(boxes, b => Measures(b, 98, 64));
        var card = Assert.Single(boxes.Where(b => Measures(b, 62, 40 + 18)).Distinct());
        var hole = Assert.Single(boxes.Where(b => Measures(b, 3.1, 3.1)).Distinct());
        Assert.Equal(18, (hole.Centroid.X - card.Left) * MillimetresPerPoint, 0.1);
        Assert.Equal(16 + 9, (hole.Centroid.Y - card.Bottom) * MillimetresPerPoint, 0.1);
    }

    [Fact]
    public void A_row_taller_than_a_page_goes_on_over_the_next_and_loses_no_word()
    {
        var town = PrintedSaltmarrow.Town;
        var name = string.Join(' ', Enumerable.Range(0, 2000).Select(i => $"word{i}"));
        var pages = Printed(PrintedSaltmarrow.Edited(town with { Buildings = [town.Buildings[0] with { Name = name }] }));
        var list = string.Join(' ', pages.Where(p => p.Page.Text.StartsWith("Load list", StringComparison.Ordinal)).Select(p => p.Text));
        Assert.All(Enumerable.Range(0, 2000), i => Assert.Contains($"word{i}", list, StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_town_prints_the_same_bytes() =>
        Assert.Equal(PrintedSaltmarrow.Bytes(TownStudy.Of(PrintedSaltmarrow.Example("tavern.json")), Today), PrintedSaltmarrow.Bytes(TownStudy.Of(PrintedSaltmarrow.Example("tavern.json")), Today));

    [Fact]
    public void Two_houses_of_one_name_each_print_their_own_label()
    {
        var town = PrintedSaltmarrow.Town;
        var twins = town with { Buildings = town.Buildings.Select((b, i) => i == 1 ? b with { Id = b.Key, Name = town.Buildings[0].Name } : b).ToItemList() };
        var study = PrintedSaltmarrow.Edited(twins);
        var pages = Printed(study).Select(p => p.Text).ToList();
        Assert.All(study.Labels.Take(2), l => Assert.Single(pages, p => p.Contains($"label {l.Code} {l.Terminal},", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_word_wider_than_its_column_is_broken_and_lies_over_no_other()
    {
        var town = PrintedSaltmarrow.Town;
        var name = new string('m', 60);
        var wide = town with { Buildings = town.Buildings.Select((b, i) => i == 1 ? b with { Id = b.Key, Name = name } : b).ToItemList() };
        var list = ReadPage.Of(PrintedSaltmarrow.Edited(wide), Today with { Choice = BookChoice.Sheet("load") }).First(p => p.Page.Text.StartsWith("Load list", StringComparison.Ordinal));
        var run = list.Page.Letters.Where(l => l.Value == "m").Select(l => l.BoundingBox).ToList();
        var leds = list.Words.First(w => w.Text == "LEDs").BoundingBox.Left;
        Assert.Contains(run, b => b.Left < leds);
        Assert.DoesNotContain(run, b => b.Left < leds && b.Right > leds);
        Assert.DoesNotContain(list.Words, w => w.Text.Contains(new string('m', 30), StringComparison.Ordinal));
    }

    private static IReadOnlyList<ReadPage> Printed(TownStudy study) => ReadPage.Of(study, Today);

    // Thin spaces and spaces read back alike.
    private static string Spoken(string text) => text.Replace('\u2009', ' ');
}
