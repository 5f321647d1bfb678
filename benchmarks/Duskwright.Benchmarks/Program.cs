using Duskwright.Benchmarks;
using Duskwright.Benchmarks.Cells;
using Duskwright.Benchmarks.Harness;

return args switch
{
    ["study"] => StudyBenchmark.Run(),
    ["cells"] => CellsBenchmark.Run(),
    ["harness", .. var rest] => HarnessBenchmark.Run(Folder(rest), rest.Contains("--all")),
    ["circuits"] => CircuitsBenchmark.Run(),
    ["calendar", .. var rest] => CalendarBenchmark.Run(Folder(rest)),
    _ => Usage(),
};

static string? Folder(string[] words) => Array.IndexOf(words, "--instances") is >= 0 and var at && at + 1 < words.Length ? words[at + 1] : null;

static int Usage()
{
    Console.Error.WriteLine("Name a room: circuits, cells, study, harness [--instances DIR] [--all], calendar [--instances DIR].");
    return 2;
}
