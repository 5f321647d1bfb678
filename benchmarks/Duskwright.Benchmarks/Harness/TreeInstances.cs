using System.Collections.Immutable;
using Duskwright.Harness.Trunks;

namespace Duskwright.Benchmarks.Harness;

/// <summary>Trunks of several packs against published values.</summary>
/// <remarks>OR-Library capmst1 and capmst2 (L. Gouveia; Y. Sharaiha); values of E. Ruiz and others, Computers and Operations Research 57 (2015) 95-108, tables 9 and 11, and for 40 nodes of the literature.</remarks>
internal static class TreeInstances
{
    internal static void Run(string folder, bool all, InstanceTable table)
    {
        folder = Path.Combine(folder, "cmst");
        foreach (var (row, i) in InstanceFile.Rows(Path.Combine(folder, "best-known.csv")).Select((r, i) => (r, i)))
        {
            if (all || i % 6 == 0)
            {
                var file = row("file");
                var problem = Problem(folder, file, row("capacity_q").Whole());
                var isLarge = file.StartsWith("cm100", StringComparison.Ordinal);
                table.Row($"cmst {file} {row("capacity_q")}", row("value").Number(), isLarge ? 0.05 : 0.01, () =>
                {
                    var answer = PackTrees.Solve(problem, new PackTreeSettings(Moves: 8_000_000));
                    return (answer.Metres, answer.AtLeastMetres);
                });
            }
        }
    }

    // The depot is the last place of the matrix; some lengths of the 80-node files differ by 1 or 2 in their two senses and the lesser counts.
    private static PackTreeProblem Problem(string folder, string file, int capacity)
    {
        var words = File.ReadAllText(Path.Combine(folder, file)).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        var hasLoads = file.StartsWith("cm", StringComparison.Ordinal);
        var places = words[1].Whole() + (hasLoads ? 0 : 1);
        var order = Enumerable.Range(0, places - 1).Prepend(places - 1).ToArray();
        double At(int i, int j) => words[2 + (i * places) + j].Number();
        var loads = hasLoads
            ? File.ReadAllText(Path.Combine(folder, $"priz{places}r.dat")).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(w => w.Whole()).ToList()
            : [.. Enumerable.Repeat(1, places - 1)];
        return new PackTreeProblem(
            [.. order.Select(i => ImmutableArray.CreateRange(order.Select(j => Math.Min(At(i, j), At(j, i)))))],
            [.. loads.Prepend(0)],
            capacity);
    }
}
