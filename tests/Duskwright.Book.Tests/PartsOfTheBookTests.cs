using Duskwright.Book.Sheets;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study;
using UglyToad.PdfPig;

namespace Duskwright.Book.Tests;

/// <summary>A part of the book alone, and only what has changed.</summary>
public sealed class PartsOfTheBookTests
{
    private static readonly Town Town = PrintedSaltmarrow.Town;
    private static readonly TownStudy Saltmarrow = PrintedSaltmarrow.Study;
    private static readonly BookOptions Today = new(PaperSize.A4, new DateOnly(2026, 11, 25));

    [Fact]
    public void Labels_alone_are_labels_alone() => Assert.All(Titles(Saltmarrow, Today with { Choice = BookChoice.Labels }), t => Assert.StartsWith("Labels", t, StringComparison.Ordinal));

    [Fact]
    public void A_shared_pair_has_its_label_too()
    {
        var tapped = new Town
        {
            Name = "Umber",
            Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
            SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
            Buildings = [new Building { Name = "Inn", Leds = 2, SwitchGroup = "A" }],
            Taps = [new Tap { Id = "TA1", SwitchGroup = "A", Length = Length.FromMillimetres(300), Points = [Point.At(100, 100), Point.At(400, 100)] }],
        };
        var pages = ReadPage.Of(TownStudy.Of(tapped), Today with { Choice = BookChoice.Sheet("flags"), Address = "http://192.168.1.20:5188" });
        Assert.Contains(pages, p => p.Page.Text.Contains("TA1", StringComparison.Ordinal));
    }

    [Fact]
    public void A_building_alone_is_its_own_sheet() =>
        Assert.All(Titles(Saltmarrow, Today with { Choice = BookChoice.Building("chandlery") }), t => Assert.StartsWith("Chandlery", t, StringComparison.Ordinal));

    [Fact]
    public void A_pack_alone_has_every_house_on_it_and_no_other()
    {
        var titles = Titles(Saltmarrow, Today with { Choice = BookChoice.Pack("3") });
        var on = Saltmarrow.Packs[2].Buildings.Select(k => Town.Buildings.First(b => b.Key == k).Name).ToList();
        Assert.All(on, name => Assert.Contains(titles, t => t.StartsWith(name, StringComparison.Ordinal)));
        Assert.All(titles, t => Assert.Contains(on, name => t.StartsWith(name, StringComparison.Ordinal)));
    }

    [Fact]
    public void Nothing_is_printed_again_where_nothing_has_changed() =>
        Assert.Equal(0, BenchBook.WritePdf(Saltmarrow, Today with { Since = new Printing(PrintedSaltmarrow.Edited(Town), "yesterday", []) }, new MemoryStream(), cancel: TestContext.Current.CancellationToken));

    // A note on one house, or a new date, changes no other sheet.
    [Fact]
    public void Only_sheets_that_show_something_else_are_printed_again()
    {
        var edited = Town with { Buildings = Town.Buildings.Select(b => b.Key == "chandlery" ? b with { TailLength = Length.FromMillimetres(333) } : b).ToItemList() };
        var titles = Titles(PrintedSaltmarrow.Edited(edited), new BookOptions(PaperSize.A4, new DateOnly(2026, 12, 1)) { Since = new Printing(Saltmarrow, "25 November", ["the Chandlery's tails are 333 mm"]) });
        Assert.StartsWith("Changed since 25 November", titles[0], StringComparison.Ordinal);
        Assert.Contains("333 mm", titles[0], StringComparison.Ordinal);
        Assert.Contains(titles, t => t.StartsWith("Chandlery", StringComparison.Ordinal));
        Assert.DoesNotContain(titles, t => t.StartsWith("Chapel", StringComparison.Ordinal) || t.StartsWith("The board", StringComparison.Ordinal) || t.StartsWith("Parts list", StringComparison.Ordinal));
        Assert.All(titles, t => Assert.Contains("changed since 25 November", t, StringComparison.Ordinal));
    }

    [Fact]
    public void Printing_tells_how_far_it_is_and_can_be_ended()
    {
        var shares = new List<double>();
        _ = BenchBook.WritePdf(Saltmarrow, Today, Stream.Null, new Heard(shares), TestContext.Current.CancellationToken);
        Assert.Equal(shares.Order(), shares);
        Assert.Equal(1, shares[^1]);
        using var ended = new CancellationTokenSource();
        ended.Cancel();
        Assert.Throws<OperationCanceledException>(() => BenchBook.WritePdf(Saltmarrow, Today, Stream.Null, null, ended.Token));
    }

    private static List<string> Titles(TownStudy study, BookOptions options)
    {
        using var stream = new MemoryStream();
        Assert.True(BenchBook.WritePdf(study, options, stream, cancel: TestContext.Current.CancellationToken) > 0);
        using var book = PdfDocument.Open(stream.ToArray());
        return [.. book.GetPages().Select(p => string.Join(' ', p.GetWords().Select(w => w.Text)))];
    }

    private sealed class Heard(List<double> shares) : IProgress<double>
    {
        public void Report(double value) => shares.Add(value);
    }
}
