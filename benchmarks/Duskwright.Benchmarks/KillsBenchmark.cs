using System.Globalization;
using Duskwright.Store;
using Spectre.Console;

namespace Duskwright.Benchmarks;

/// <summary>A working file under a writing load, its writer killed at random moments: what was acknowledged is there, and the file is sound.</summary>
internal static class KillsBenchmark
{
    private const int Kills = 1000;
    private const int Lanes = 2;
    private const int TracedStrokes = 40;

    // A fresh file every so often, so that the making of one is killed too.
    private const int LivesPerFile = 25;

    internal static int Run()
    {
        var folder = Directory.CreateTempSubdirectory("duskwright-kills");
        try
        {
            var lanes = Enumerable.Range(0, Lanes).Select(lane => Task.Run(() => Lane(folder.CreateSubdirectory(Text(lane)).FullName, lane))).ToArray();
            var lives = lanes.SelectMany(l => l.Result).ToList();
            var wrong = lives.Where(l => l.Wrong is not null).ToList();
            var table = new Table().AddColumns("claim", "goal", "measured", "holds");
            var kept = Row(
                table,
                "killed at random moments, every acknowledged stroke is there and the file sound",
                $"{Kills} kills, none lost",
                $"{lives.Count} kills: {lives.Count(l => l.Life.InStarting)} while starting, {lives.Count(l => l.Life.MidStroke)} amid a stroke; {lives.Sum(l => l.Life.Acknowledged)} strokes acknowledged, {wrong.Count} files wrong",
                lives.Count >= Kills && wrong.Count == 0 && lives.Any(l => l.Life.MidStroke));
            var traced = SyncTrace.Of(folder.FullName, TracedStrokes);
            var synchronised = Row(
                table,
                "the log is written and synchronised before each acknowledgement",
                $"{TracedStrokes} of {TracedStrokes}",
                traced is { } calls ? $"{calls.Acknowledged - calls.TooEarly} of {calls.Acknowledged}" : "not shown: strace is not installed",
                traced is { Acknowledged: TracedStrokes, TooEarly: 0 });
            AnsiConsole.Write(table);
            wrong.ForEach(w => Console.Error.WriteLine(w.Wrong));
            return kept && synchronised ? 0 : 1;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static List<(KilledLife Life, string? Wrong)> Lane(string folder, int seed)
    {
        var random = new Random(seed);
        var lives = new List<(KilledLife, string?)>();
        var marks = new Dictionary<long, string>();
        for (var turn = 0; turn < Kills / Lanes; turn++)
        {
            var path = Path.Combine(folder, $"{Text(turn / LivesPerFile)}{WorkingFile.Ending}");
            var life = KilledLife.Live(path, random);
            var wrong = life.Wrong(path);
            foreach (var (revision, mark) in life.Marks)
            {
                marks[revision] = mark;
            }

            if (turn % LivesPerFile == LivesPerFile - 1)
            {
                wrong ??= Lost(path, marks);
                marks.Clear();
            }

            lives.Add((life, wrong));
        }

        return lives;
    }

    // At the end of a file's many lives every edit ever acknowledged is in its history.
    private static string? Lost(string path, Dictionary<long, string> marks)
    {
        if (marks.Count == 0)
        {
            return null;
        }

        using var file = WorkingFile.Open(path, TimeProvider.System).File!;
        var labels = file.Revisions(int.MaxValue).ToDictionary(r => r.Id, r => r.Label);
        return marks.All(m => labels.GetValueOrDefault(m.Key) == m.Value) ? null : $"{path} lost an edit of an earlier life";
    }

    private static bool Row(Table table, string claim, string goal, string measured, bool holds)
    {
        table.AddRow(claim, goal, measured, holds ? "yes" : "NO");
        return holds;
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
