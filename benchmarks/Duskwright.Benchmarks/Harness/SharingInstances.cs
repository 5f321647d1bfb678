using Duskwright.Harness.Sharing;

namespace Duskwright.Benchmarks.Harness;

/// <summary>Sharing against published values.</summary>
/// <remarks>
/// Packs of one kind: OR-Library binpack1 (E. Falkenauer), optima as checked in the folder's table, and Falkenauer's triplets (120 loads in 40 full packs by construction).
/// Packs in given places: OR-Library gap1 to gap8, a greatest total, here the least of the negative costs.
/// </remarks>
internal static class SharingInstances
{
    internal static void Run(string folder, bool all, InstanceTable table)
    {
        Packing(Path.Combine(folder, "binpack"), all, table);
        Assignment(Path.Combine(folder, "gap"), all, table);
    }

    private static void Packing(string folder, bool all, InstanceTable table)
    {
        var problems = new Dictionary<string, ColumnProblem>();
        var numbers = InstanceFile.Numbers(Path.Combine(folder, "binpack1.txt"));
        var count = (int)numbers.Next();
        for (var i = 0; i < count; i++)
        {
            var head = numbers.Next(3);
            problems[$"u120_{i:00}"] = ColumnProblem.Fewest(numbers.Next((int)head[1]).Select(x => (int)x), (int)head[0], (int)head[1]);
        }

        foreach (var file in Directory.EnumerateFiles(folder, "Falkenauer_*.txt"))
        {
            var triplets = InstanceFile.Numbers(file);
            var head = triplets.Next(2);
            problems[Path.GetFileNameWithoutExtension(file).Replace("Falkenauer_", "", StringComparison.Ordinal)] =
                ColumnProblem.Fewest(triplets.Next((int)head[0]).Select(x => (int)x), (int)head[1], (int)head[0]);
        }

        foreach (var row in InstanceFile.Rows(Path.Combine(folder, "best-known.csv")).Where((_, i) => all || i % 5 == 0))
        {
            table.Row($"binpack {row("name")}", row("optimum").Number(), 0, () =>
            {
                var answer = ColumnSharing.Solve(problems[row("name")], new ColumnSettings());
                return (answer.Cost, answer.AtLeast);
            });
        }
    }

    private static void Assignment(string folder, bool all, InstanceTable table)
    {
        foreach (var file in InstanceFile.Rows(Path.Combine(folder, "best-known.csv")).GroupBy(r => r("file")))
        {
            var numbers = InstanceFile.Numbers(Path.Combine(folder, file.Key));
            _ = numbers.Next();
            foreach (var (row, i) in file.Select((r, i) => (r, i)))
            {
                var (agents, jobs) = ((int)numbers.Next(), (int)numbers.Next());
                var values = Enumerable.Range(0, agents).Select(_ => numbers.Next(jobs)).ToList();
                var takes = Enumerable.Range(0, agents).Select(_ => numbers.Next(jobs)).ToList();
                var problem = new ColumnProblem(
                    [.. numbers.Next(agents).Select(c => new PackKind((int)c, 1, 0))],
                    [.. takes.Select(t => System.Collections.Immutable.ImmutableArray.CreateRange(t.Select(x => (int)x)))],
                    [.. values.Select(v => System.Collections.Immutable.ImmutableArray.CreateRange(v.Select(x => -(long)x)))]);
                if (all || i == 0)
                {
                    table.Row($"gap {row("name")}", row("value_max").Number(), 0, () =>
                    {
                        var answer = ColumnSharing.Solve(problem, new ColumnSettings());
                        return (-answer.Cost, -answer.AtLeast);
                    }, greatest: true);
                }
            }
        }
    }
}
