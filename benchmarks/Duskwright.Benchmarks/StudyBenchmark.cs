using System.Diagnostics;
using System.Globalization;
using Duskwright.Book.Sheets;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study;
using Duskwright.Study.Sums;
using Spectre.Console;

namespace Duskwright.Benchmarks;

/// <summary>Study of Saltmarrow: how long in full and after an edit, and how many lamps a pack carries.</summary>
internal static class StudyBenchmark
{
    private const int Turns = 9;
    private static readonly BookOptions Options = new(PaperSize.A4, new DateOnly(2026, 11, 25));
    private static readonly Town Nowhere = new() { Name = "" };

    internal static int Run()
    {
        var town = TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"))).Town!;
        _ = Everything(TownStudy.Of(town));
        var full = Median(_ => Everything(TownStudy.Of(town)));
        var study = TownStudy.Of(town);
        _ = Everything(study);
        var edit = Median(turn => Everything(study.After(WithTail(town, turn))));
        var pages = BenchBook.WritePdf(study, Options, Stream.Null);
        var book = Median(_ => BenchBook.WritePdf(TownStudy.Of(town), Options, Stream.Null));
        var rule = RuleOfThumb();

        var table = new Table().AddColumns("claim", "goal", "measured", "holds");
        var holds = Row(table, "Saltmarrow in full, after start-up", "under 1000 ms", full, full < 1000)
            & Row(table, "one building edited, computed again", "under 50 ms", edit, edit < 50)
            & Row(table, $"its book of {pages} pages", "under 5000 ms", book, book < 5000)
            & rule;
        AnsiConsole.Write(table);
        return holds ? 0 : 1;
    }

    private static bool RuleOfThumb()
    {
        var table = new Table().Title("Lamps from which the loss is seen (common practice: about 20; nothing is tuned to it)").AddColumns("build", "look dimmer, fresh", "dim within 3 h", "spoiled within 3 h");
        var within = false;
        foreach (var (lamp, ohms, words) in new[]
        {
            ("flicker-3mm-yellow", 0.0, "yellow flickering, bare"), ("flicker-3mm-yellow", 47, "yellow flickering, 47 Ω"),
            ("led-3mm-yellow", 47, "yellow steady, 47 Ω"), ("led-3mm-yellow", 120, "yellow steady, 120 Ω"), ("led-0603-warm-white", 820, "warm white, 820 Ω (2 mA)"),
        })
        {
            foreach (var cells in new[] { 2, 3 })
            {
                var answer = QuickSums.HowManyLamps(new Supply { Id = "1", Part = "LR6", Series = cells }, Catalogue.FindLamp(Nowhere, lamp)!, Resistance.FromOhms(ohms), new Show { HoursPerDay = Duration.FromHours(3) });
                string Count(int figure) => answer.Figures[figure].Value.ToString("0", CultureInfo.InvariantCulture);
                table.AddRow($"{cells} × LR6, {words}", Count(0), Count(2), Count(3));
                within |= lamp != "led-0603-warm-white" && answer.Figures[0].Value is >= 10 and <= 40;
            }
        }

        AnsiConsole.Write(table);
        return within;
    }

    private static bool Row(Table table, string claim, string goal, double milliseconds, bool holds)
    {
        table.AddRow(claim, goal, $"{milliseconds.ToString("0.0", CultureInfo.InvariantCulture)} ms", holds ? "yes" : "NO");
        return holds;
    }

    private static double Median(Func<int, int> work)
    {
        var times = Enumerable.Range(0, Turns).Select(turn =>
        {
            var start = Stopwatch.GetTimestamp();
            _ = work(turn);
            return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }).Order().ToList();
        return times[Turns / 2];
    }

    private static Town WithTail(Town town, int turn) =>
        town with { Buildings = town.Buildings.Select((b, i) => i == 16 ? b with { TailLength = Length.FromMillimetres(100 + turn) } : b).ToItemList() };

    private static int Everything(TownStudy study) =>
        study.Findings.Count + study.Lamps.Count + study.LoadList.Count + study.SwitchList.Count + study.CutList.Count + study.PartsList.Count + study.Labels.Count;
}
