using Duskwright.Book.Sheets;
using Duskwright.Plan.Document;
using Duskwright.Study.Bench;

namespace Duskwright.Book.Tests.Sheets;

/// <summary>The calendar on paper, and one evening's sheets alone.</summary>
public sealed class EveningSheetsTests
{
    private static readonly DateOnly First = new(2026, 12, 4);
    private static readonly DateTime Evening = First.ToDateTime(new TimeOnly(19, 30));

    // Three houses on two evenings; two are painted at one time, so two pairs of hands are at work.
    private static readonly Town Town = PrintedSaltmarrow.Town with
    {
        Calendar = new BenchCalendar
        {
            Hands = 2,
            Steps =
            [
                At("chapel", "paint", Evening, 40), At("schoolroom", "paint", Evening, 40), At("chapel", "glaze", Evening.AddMinutes(40), 20), At("sextons", "paint", Evening.AddDays(7), 20),
            ],
            Finish = Evening.AddDays(8),
        },
    };

    [Fact]
    public void Each_evening_says_who_does_what_on_which_house_with_a_box_to_tick()
    {
        Assert.All(Town.Calendar!.Steps, s => Assert.Contains(BuildSteps.Of(Town, Town.Buildings.Single(b => b.Key == s.Building)), left => left.Key == s.Step));
        var text = string.Join(' ', Printed(BookChoice.Sheet("calendar")).Select(p => p.Text));
        var (one, other) = (text.IndexOf("Friday 4 December 2026", StringComparison.Ordinal), text.IndexOf("Friday 11 December 2026", StringComparison.Ordinal));
        Assert.InRange(one, 0, other);
        Assert.Matches("19:30 1 .*Chapel 40 19:30 2 .*Schoolroom 40 20:10 1 .*Chapel 20", text[one..other]);
        Assert.Matches("19:30 1 .*Sexton's 20", text[other..]);
        Assert.Equal(Town.Calendar.Steps.Count, text.Split("[ ]").Length - 1);
        Assert.Contains("dry on Saturday 12 December 2026", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Tonights_sheets_are_the_evening_its_houses_and_their_labels_and_nothing_else()
    {
        var pages = Printed(BookChoice.Evening(First));
        Assert.StartsWith("Tonight, Friday 4 December 2026", pages[0].Text, StringComparison.Ordinal);
        Assert.All(pages.Skip(1), p => Assert.Matches("^(Chapel|Schoolroom|Labels to fold over the pairs)", p.Text));
        Assert.All((string[])["Chapel", "Schoolroom"], house => Assert.Contains(pages, p => p.Text.StartsWith(house, StringComparison.Ordinal)));
        var labels = Assert.Single(pages, p => p.Text.StartsWith("Labels", StringComparison.Ordinal)).Words.Select(w => w.Text).ToList();
        Assert.Equal((2, 2, 0), (labels.Count(w => w == "CH"), labels.Count(w => w == "SC"), labels.Count(w => w == "SE")));
    }

    [Fact]
    public void An_evening_without_work_has_no_sheets() =>
        Assert.Equal(0, BenchBook.WritePdf(PrintedSaltmarrow.Edited(Town), Today with { Choice = BookChoice.Evening(First.AddDays(1)) }, Stream.Null, cancel: TestContext.Current.CancellationToken));

    [Fact]
    public void What_is_ticked_is_printed_no_more()
    {
        var ticked = Town with { Log = [.. Town.Log, new LogEntry { Date = First, Kind = LogKind.StepDone, Building = "sextons", Step = "paint" }] };
        var text = string.Join(' ', ReadPage.Of(PrintedSaltmarrow.Edited(ticked), Today with { Choice = BookChoice.Sheet("calendar") }).Select(p => p.Text));
        Assert.DoesNotContain("11 December", text, StringComparison.Ordinal);
    }

    private static BookOptions Today => new(PaperSize.A4, PrintedSaltmarrow.Date);

    private static IReadOnlyList<ReadPage> Printed(BookChoice choice) => ReadPage.Of(PrintedSaltmarrow.Edited(Town), Today with { Choice = choice });

    private static CalendarStep At(string building, string step, DateTime start, int minutes) => new() { Building = building, Step = step, Start = start, Minutes = minutes };
}
