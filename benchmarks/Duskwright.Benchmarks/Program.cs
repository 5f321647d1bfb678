using System.Globalization;
using Duskwright.Benchmarks;
using Duskwright.Benchmarks.Cells;
using Duskwright.Benchmarks.Editing;
using Duskwright.Benchmarks.Faults;
using Duskwright.Benchmarks.Harness;

return args switch
{
    ["study"] => StudyBenchmark.Run(),
    ["book"] => BookBenchmark.Run(),
    ["light"] => LightBenchmark.Run(),
    ["cells"] => CellsBenchmark.Run(),
    ["harness", .. var rest] => HarnessBenchmark.Run(Folder(rest), rest.Contains("--all")),
    ["faults"] => FaultsBenchmark.Run(),
    ["circuits"] => CircuitsBenchmark.Run(),
    ["calendar", .. var rest] => CalendarBenchmark.Run(Folder(rest)),
    ["editing"] => await EditingBenchmark.RunAsync(null),
    ["editing", "--program", var program] => await EditingBenchmark.RunAsync(program),
    ["kills"] => KillsBenchmark.Run(),

    // The kills benchmark runs itself as its writer.
    [KillsWriter.Word, var path, var seed] => KillsWriter.Run(path, Whole(seed), int.MaxValue),
    [KillsWriter.Word, var path, var seed, var most] => KillsWriter.Run(path, Whole(seed), Whole(most)),
    _ => Usage(),
};

static int Whole(string word) => int.Parse(word, CultureInfo.InvariantCulture);

static string? Folder(string[] words) => Array.IndexOf(words, "--instances") is >= 0 and var at && at + 1 < words.Length ? words[at + 1] : null;

static int Usage()
{
    Console.Error.WriteLine("Name a room: book, circuits, cells, editing [--program DLL], faults, light, study, harness [--instances DIR] [--all], calendar [--instances DIR], kills.");
    return 2;
}
