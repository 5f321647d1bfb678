using Duskwright.Book.Sheets;
using Duskwright.Study;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace Duskwright.Book.Tests.Sheets;

/// <summary>The codes on the labels for the pairs, read back from the printed file.</summary>
public sealed class LabelCodesTests
{
    private const double MillimetresPerPoint = 25.4 / 72;
    private const string Address = "http://192.168.1.20:5188";

    // A camera tells modules of a third of a millimetre apart at arm's length of the bench: common practice, no source.
    private const double LeastModule = 0.3;
    private static readonly TownStudy Saltmarrow = PrintedSaltmarrow.Study;

    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void Each_label_of_a_shared_town_says_its_houses_page_on_both_faces(PaperSize paper)
    {
        var said = Flags(paper, Address).SelectMany(p => p.Page.Paths).Where(IsCode).Select(p => CodeReader.Read(Modules(p))).ToList();
        Assert.Equal(Saltmarrow.Labels.SelectMany(l => Enumerable.Repeat($"{Address}/bench/house/{Saltmarrow.Buildings.Single(b => b.Code == l.Code).Building.Key}", 2)).Order(), said.Order());
    }

    // Four light modules around a code: its quiet zone, ISO/IEC 18004:2015, 6.3.8 (from memory). The label's edge may be cut, the fold may not reach into it.
    [Fact]
    public void A_code_is_large_enough_for_a_camera_and_has_its_quiet_zone()
    {
        foreach (var page in Flags(PaperSize.A4, Address))
        {
            var boxes = page.Page.Paths.Select(p => (Path: p, Box: p.GetBoundingRectangle())).Where(p => p.Box is not null).Select(p => (p.Path, Box: p.Box!.Value)).ToList();
            Assert.All(boxes.Where(b => IsCode(b.Path)), code =>
            {
                var module = code.Box.Width / Modules(code.Path).GetLength(0);
                Assert.True(module * MillimetresPerPoint >= LeastModule, $"modules of {module * MillimetresPerPoint} mm");
                var quiet = new PdfRectangle(code.Box.Left - (3.9 * module), code.Box.Bottom - (3.9 * module), code.Box.Right + (3.9 * module), code.Box.Top + (3.9 * module));
                Assert.DoesNotContain(page.Page.Letters, l => !string.IsNullOrWhiteSpace(l.Value) && Overlap(l.BoundingBox, quiet));
                Assert.DoesNotContain(boxes, b => b.Path != code.Path && b.Box.Width < code.Box.Width && Overlap(b.Box, quiet));
            });
        }
    }

    [Fact]
    public void The_labels_of_a_town_that_is_not_shared_carry_no_code() =>
        Assert.DoesNotContain(Flags(PaperSize.A4, null).SelectMany(p => p.Page.Paths), IsCode);

    private static IReadOnlyList<ReadPage> Flags(PaperSize paper, string? address) =>
        ReadPage.Of(Saltmarrow, new BookOptions(paper, PrintedSaltmarrow.Date) { Choice = BookChoice.Sheet("flags"), Address = address });

    private static bool IsCode(PdfPath path) => path.IsFilled && path.Count > 100;

    // The first bar of the first row is the edge of a finder pattern, seven modules wide.
    private static bool[,] Modules(PdfPath code)
    {
        var bars = code.Select(s => s.GetBoundingRectangle()!.Value).ToList();
        var (left, top) = (bars.Min(b => b.Left), bars.Max(b => b.Top));
        var module = bars.First(b => Math.Abs(b.Left - left) < 0.01 && Math.Abs(b.Top - top) < 0.01).Width / 7;
        var size = (int)Math.Round((top - bars.Min(b => b.Bottom)) / module);
        var dark = new bool[size, size];
        foreach (var bar in bars)
        {
            var (row, column) = ((int)Math.Round((top - bar.Top) / module), (int)Math.Round((bar.Left - left) / module));
            for (var i = 0; i < (int)Math.Round(bar.Width / module); i++)
            {
                dark[row, column + i] = true;
            }
        }

        return dark;
    }

    private static bool Overlap(PdfRectangle one, PdfRectangle other) =>
        Math.Min(one.Right, other.Right) > Math.Max(one.Left, other.Left) && Math.Min(one.Top, other.Top) > Math.Max(one.Bottom, other.Bottom);
}
