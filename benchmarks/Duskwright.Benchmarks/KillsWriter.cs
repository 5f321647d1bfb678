using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Store;

namespace Duskwright.Benchmarks;

/// <summary>A writing load on one working file. It says what it will do before, and what it did once that is acknowledged.</summary>
internal static class KillsWriter
{
    internal const string Word = "kills-writer";

    // Every so many strokes a picture of up to this size goes in, so that the log is taken into the file while edits go on.
    private const int StrokesBetweenPictures = 15;
    private const int LargestPictureBytes = 400_000;

    /// <summary>Writes until it is killed, or until it has done enough.</summary>
    /// <param name="path">The file; begun where it is not there.</param>
    /// <param name="seed">What the load is drawn from.</param>
    /// <param name="most">How many strokes at most.</param>
    /// <returns>0, or 1 where something was refused.</returns>
    internal static int Run(string path, int seed, int most)
    {
        var opened = File.Exists(path) ? WorkingFile.Open(path, TimeProvider.System) : WorkingFile.Create(path, Saltmarrow(), "Begin", TimeProvider.System);
        if (opened.File is not { } file)
        {
            return Refused(opened.Problems);
        }

        using (file)
        {
            Say($"open {file.Head.Id}");
            var random = new Random(seed);
            for (var stroke = 1; stroke <= most; stroke++)
            {
                var problems = Stroke(file, random, stroke);
                if (problems.Count > 0)
                {
                    return Refused(problems);
                }

                Say($"did {file.Head.Id}");
            }
        }

        return 0;
    }

    /// <summary>What an edit leaves in the first building, to know the edit by.</summary>
    /// <param name="town">The town.</param>
    /// <returns>The mark; none before the first edit.</returns>
    internal static string? MarkOf(Town town) => town.Buildings[0].Note;

    private static ItemList<Plan.Checks.Problem> Stroke(WorkingFile file, Random random, int stroke)
    {
        if (stroke % StrokesBetweenPictures == 0)
        {
            var picture = new byte[random.Next(100, LargestPictureBytes)];
            random.NextBytes(picture);
            ((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]).CopyTo(picture);
            Say($"will keep {file.Head.Id}");
            return file.KeepPicture("board", picture);
        }

        var choice = random.Next(10);
        if (choice == 0 && file.Head.Parent is { } parent)
        {
            Say($"will go {parent}");
            return file.Undo();
        }

        if (choice == 1 && file.Next is { } next)
        {
            Say($"will go {next.Id}");
            return file.Redo();
        }

        var mark = random.NextInt64().ToString(CultureInfo.InvariantCulture);
        Say($"will mark {mark}");
        return file.Change(file.Town with { Buildings = file.Town.Buildings.Select((b, i) => i == 0 ? b with { Note = mark } : b).ToItemList() }, mark);
    }

    private static Town Saltmarrow() => TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"))).Town!;

    private static void Say(FormattableString words) => Console.Out.WriteLine(FormattableString.Invariant(words));

    private static int Refused(ItemList<Plan.Checks.Problem> problems)
    {
        Console.Error.WriteLine(string.Join('\n', problems.Select(p => p.Message)));
        return 1;
    }
}
