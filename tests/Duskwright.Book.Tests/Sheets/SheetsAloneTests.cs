using System.Globalization;
using System.Text.RegularExpressions;
using Duskwright.Book.Sheets;
using Duskwright.Plan.Document;
using Duskwright.Study;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Duskwright.Book.Tests.Sheets;

/// <summary>The town's own sheets, each printed alone and read back.</summary>
public sealed partial class SheetsAloneTests
{
    private const double MillimetresPerPoint = 25.4 / 72;
    private static readonly Town Town = PrintedSaltmarrow.Town;
    private static readonly TownStudy Saltmarrow = PrintedSaltmarrow.Study;

    [Fact]
    public void A_strip_has_a_field_of_true_size_for_every_switch()
    {
        var page = Assert.Single(Printed(Saltmarrow, "strips"));
        var words = page.GetWords().Select(w => w.Text).ToList();
        Assert.All(Town.SwitchGroups, g => Assert.Contains(g.Id, words));

        // Of each strip the frame is dashed: its corners are the outermost ends of its dashes. A pack's field is 34 mm wide, a switch's 24 mm, both 18 mm high.
        var lines = page.Paths.Select(p => p.GetBoundingRectangle()).OfType<PdfRectangle>().ToList();
        var uprights = lines.Where(l => Math.Abs((l.Height * MillimetresPerPoint) - 18) < 0.1 && l.Width < 0.3).ToList();
        Assert.Equal(Town.SwitchGroups.Count, uprights.Count);
        var frames = lines.Where(l => l.Height * MillimetresPerPoint is > 17.9 and < 18.1 && l.Width * MillimetresPerPoint > 50).Select(l => l.Width * MillimetresPerPoint).ToList();
        Assert.Equal(Saltmarrow.Packs.Select(p => 34 + (24.0 * p.SwitchGroups.Count)).Order(), frames.Order(), (a, b) => Math.Abs(a - b) < 0.1);
    }

    // The pair lies on the fold: both faces are of one size, so that the halves meet when they are stuck together.
    [Fact]
    public void A_label_folds_in_its_middle_and_reads_the_same_on_both_faces()
    {
        var pages = Printed(Saltmarrow, "flags");
        var words = pages.SelectMany(p => p.GetWords()).Select(w => w.Text).ToList();
        Assert.All(Saltmarrow.Labels.Where(l => l.Code.Length > 1), l => Assert.Equal(2, words.Count(w => w == l.Code)));
        var lines = pages[0].Paths.Select(p => p.GetBoundingRectangle()).OfType<PdfRectangle>().Where(b => Near(b.Height, 14)).ToList();
        var frames = lines.Where(b => Near(b.Width, 68)).ToList();
        Assert.NotEmpty(frames);
        Assert.All(frames, frame => Assert.Contains(lines, fold => Near(fold.Width, 0) && Near(fold.Centroid.X - frame.Left, 34) && Near(fold.Bottom - frame.Bottom, 0)));
    }

    private static bool Near(double points, double millimetres) => Math.Abs((points * MillimetresPerPoint) - millimetres) < 0.1;

    [Fact]
    public void Labels_alone_bring_the_strips_of_the_bank_too() =>
        Assert.Contains(Printed(Saltmarrow, BookChoice.Labels), p => Text(p).StartsWith("Labels for the bank", StringComparison.Ordinal));

    // A pack that may dim before the show is over wants fresh cells no later than the earlier end of its range.
    [Fact]
    public void The_show_card_asks_for_fresh_cells_before_a_pack_can_look_dim()
    {
        var text = string.Join(' ', Printed(Saltmarrow, "show").Select(Text));
        var due = FreshBy().Matches(text).Select(m => double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture)).Order().ToList();
        var fading = Saltmarrow.Packs.Where(p => p.HoursToDim is { Low: { } low } && low < 8).Select(p => p.HoursToDim!.Low!.Value).Order().ToList();
        Assert.NotEmpty(fading);
        Assert.Equal(fading.Count, due.Count);
        Assert.All(due.Zip(fading), d => Assert.InRange(d.First, d.Second - 0.5, d.Second));
        Assert.Equal(Saltmarrow.Packs.Count(p => p.Lamps > 0) - fading.Count, Regex.Count(text, "lasts the show"));
    }

    [Fact]
    public void The_record_says_what_was_read_and_what_is_not_known()
    {
        var led = Town.Buildings.First(b => b.Led == PartId.Unknown);
        var text = string.Join(' ', Printed(Saltmarrow, "record").Select(Text));
        Assert.Matches($"{led.Name}.{{0,80}}which LEDs", text);
        Assert.All(Town.Log.Where(l => l.Note is not null), l => Assert.Contains(l.Note!, text, StringComparison.Ordinal));
        Assert.Contains("21.5 mA", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_house_of_which_all_is_said_and_measured_has_nothing_unknown()
    {
        var sure = Town.Buildings[0] with { Led = "led-0603-warm-white", Storeys = [], Leds = 2, Resistor = ResistorChoice.Of(Plan.Quantities.Resistance.FromOhms(820)), PairLength = Plan.Quantities.Length.FromMillimetres(900), Wire = "cu-0.20" };
        var text = string.Join(' ', Printed(PrintedSaltmarrow.Edited(Town with { Buildings = [sure], Routes = [], Log = [] }), "record").Select(Text));
        Assert.Contains("nothing", text, StringComparison.Ordinal);
        Assert.DoesNotContain("as laid", text, StringComparison.Ordinal);
    }

    [Fact]
    public void How_to_read_tells_the_sheets_in_the_order_in_which_they_come()
    {
        var text = Text(Printed(Saltmarrow, "how")[0]);
        var at = 0;
        foreach (var title in (string[])["Before you begin", "The board;", "The board at full size", "The bank", "Circuits", "Pack list", "Cut list", "Labels", "Parts list", "If something goes dark", "Show day", "As it was built", "a sheet for each house"])
        {
            var found = text.IndexOf(title, at, StringComparison.Ordinal);
            Assert.True(found >= 0, $"{title} does not come after what stands before it.");
            at = found;
        }
    }

    [Fact]
    public void Every_sheet_of_the_town_can_be_printed_alone() =>
        Assert.All(BenchBook.SheetWords(Saltmarrow).Except(["spread"]), word => Assert.NotEmpty(Printed(Saltmarrow, word)));

    // Common practice, no source: a pane is glued on about 3 mm all round, so a window of 10 × 14 mm takes a piece of 16 × 20 mm.
    [Fact]
    public void A_pane_is_cut_larger_than_its_opening_by_what_the_glue_needs()
    {
        var window = new Window { Width = Plan.Quantities.Length.FromMillimetres(10), Height = Plan.Quantities.Length.FromMillimetres(14), Pane = new Plan.Document.Pane { Material = PaneMaterial.Frosted } };
        var door = window with { Pane = new Plan.Document.Pane { Material = PaneMaterial.Open } };
        var house = Town.Buildings[0] with { Storeys = [new Storey { Height = Plan.Quantities.Length.FromMillimetres(40), Rooms = [new Room { Windows = [window, window, door] }] }], Leds = 1 };
        var text = string.Join(' ', Printed(PrintedSaltmarrow.Edited(Town with { Buildings = [house], Routes = [], Log = [] }), BookChoice.Building(house.Key)).Select(Text));
        Assert.Contains("2 16 × 20 mm 10 × 14 mm sheet frosted on both faces", text, StringComparison.Ordinal);
        Assert.Single(GlazingRow().Matches(text));
    }

    private static List<Page> Printed(TownStudy study, string word) => Printed(study, BookChoice.Sheet(word));

    private static List<Page> Printed(TownStudy study, BookChoice choice)
    {
        using var stream = new MemoryStream();
        BenchBook.WritePdf(study, new BookOptions(PaperSize.A4, new DateOnly(2026, 11, 25)) { Choice = choice }, stream, cancel: TestContext.Current.CancellationToken);
        return [.. PdfDocument.Open(stream.ToArray()).GetPages()];
    }

    private static string Text(Page page) => string.Join(' ', page.GetWords().Select(w => w.Text)).Replace('\u2009', ' ');

    [GeneratedRegex("fresh cells by hour ([0-9.]+)")]
    private static partial Regex FreshBy();

    [GeneratedRegex(@"\d+ × \d+ mm \d+ × \d+ mm")]
    private static partial Regex GlazingRow();
}
