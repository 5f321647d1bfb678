using System.Diagnostics;
using System.Globalization;
using Duskwright.Book.Sheets;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Plan.Quantities;
using Duskwright.Study;
using Spectre.Console;

namespace Duskwright.Benchmarks;

/// <summary>The book of Saltmarrow and of a town of 504 houses: how long each takes from the town to the last page, and in how much memory.</summary>
/// <remarks>
/// Everything a book needs is computed within the clock. The books are written to nowhere, so that what is counted is the printing.
/// The peak is that of the whole process, runtime included; it never falls, so the small town comes first.
/// </remarks>
internal static class BookBenchmark
{
    // 42 buildings twelve times, four across and three deep.
    private const int Copies = 12;
    private const int Across = 4;

    internal static int Run()
    {
        var town = TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"))).Town!;
        var small = Printed(town, new Steps());
        var steps = new Steps();
        var many = Spaced(CopiedTown.Of(town, Copies, 0.1), town);
        var large = Printed(many, steps);

        var table = new Table().AddColumns("claim", "goal", "measured", "holds");
        var holds = Row(table, "pages of Saltmarrow's book", "100 or more", Text(small.Pages), small.Pages >= 100)
            & Row(table, "Saltmarrow's book, the first time", "under 5 s", $"{Text(small.Seconds)} s", small.Seconds < 5)
            & Row(table, "peak of memory", "under 300 MB", $"{Text(small.Megabytes)} MB", small.Megabytes < 300)
            & Row(table, $"book of {many.Buildings.Count} houses tells how far it is", "rising to 1, 500 steps or more", $"{steps.Count} steps to {Text(steps.Last)}", steps is { Rising: true, Last: 1, Count: >= 500 })
            & Row(table, "its peak of memory over Saltmarrow's", $"under {Copies} times", $"{Text(large.Megabytes)} MB, {Text(large.Megabytes / small.Megabytes)} times", large.Megabytes < Copies * small.Megabytes)
            & Row(table, $"its {large.Pages} pages", "in proportion: under 60 s", $"{Text(large.Seconds)} s", large.Seconds < 60);
        AnsiConsole.Write(table);
        return holds ? 0 : 1;
    }

    private static (int Pages, double Seconds, double Megabytes) Printed(Town town, IProgress<double> progress)
    {
        var start = Stopwatch.GetTimestamp();
        var pages = BenchBook.WritePdf(TownStudy.Of(town), new BookOptions(PaperSize.A4, new DateOnly(2026, 11, 25)), Stream.Null, progress);
        using var self = Process.GetCurrentProcess();
        return (pages, Stopwatch.GetElapsedTime(start).TotalSeconds, self.PeakWorkingSet64 / 1e6);
    }

    private static Town Spaced(Town many, Town one)
    {
        var (board, count) = (one.Board!, one.Buildings.Count);
        return many with
        {
            Board = board with { Width = Length.FromMillimetres(board.Width.Millimetres * Across), Depth = Length.FromMillimetres(board.Depth.Millimetres * Copies / Across) },
            Buildings = many.Buildings.Select((b, i) => b.Place is not { } place ? b : b with
            {
                Place = place with
                {
                    At = Point.At(
                        place.At.X.Millimetres + (i / count % Across * board.Width.Millimetres),
                        place.At.Y.Millimetres + (i / count / Across * board.Depth.Millimetres)),
                },
            }).ToItemList(),
        };
    }

    private static string Text(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private static bool Row(Table table, string claim, string goal, string measured, bool holds)
    {
        table.AddRow(claim, goal, measured, holds ? "yes" : "NO");
        return holds;
    }

    private sealed class Steps : IProgress<double>
    {
        internal int Count { get; private set; }

        internal double Last { get; private set; }

        internal bool Rising { get; private set; } = true;

        public void Report(double value)
        {
            Rising &= value > Last;
            (Last, Count) = (value, Count + 1);
        }
    }
}
