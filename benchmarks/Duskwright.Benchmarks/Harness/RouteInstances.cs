using Duskwright.Harness.Routes;
using Duskwright.Harness.Trunks;

namespace Duskwright.Benchmarks.Harness;

/// <summary>Shortest runs and trunks against published lengths.</summary>
/// <remarks>
/// Cells: N. Sturtevant, Benchmarks for Grid-Based Pathfinding, IEEE TCIAIG 4(2) 2012. Polygons: scenarios of the same arena with the lengths of the Polyanya
/// literature, and a worked example of two triangles. Trunks: SteinLib test set B (J. E. Beasley) and PACE Challenge 2018, track 1.
/// </remarks>
internal static class RouteInstances
{
    internal static void Run(string folder, InstanceTable table)
    {
        Cells(Path.Combine(folder, "paths-grid"), table);
        Polygons(Path.Combine(folder, "paths-polygon"), table);
        foreach (var set in new[] { "steiner-b", "steiner-grid" })
        {
            foreach (var row in InstanceFile.Rows(Path.Combine(folder, set, "best-known.csv")))
            {
                var (net, terminals) = Net(Path.Combine(folder, set, row("file")));
                table.Row($"{set} {row("file")}", row("value").Number(), 0, () =>
                {
                    var answer = TrunkRouter.Shortest(net, [.. terminals], new TrunkSettings());
                    return (answer.Metres, answer.AtLeastMetres);
                });
            }
        }
    }

    // Every run is compared; the row shows the sum, and the farthest off of all runs counts against it.
    private static void Cells(string folder, InstanceTable table)
    {
        foreach (var row in InstanceFile.Rows(Path.Combine(folder, "best-known.csv")))
        {
            var lines = File.ReadAllLines(Path.Combine(folder, row("map")));
            var (height, width) = (lines[1].Split(' ')[1].Whole(), lines[2].Split(' ')[1].Whole());
            var cells = new SurfaceCells(width, height, [.. lines.Skip(4).Take(height).SelectMany(l => l.Select(c => c == '.' ? 1.0 : double.PositiveInfinity))]);
            var runs = File.ReadLines(Path.Combine(folder, row("scenarios"))).Skip(1).Select(l => l.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Where(w => w.Length > 5).Select(w => w[^5..]).ToList();
            table.Row($"paths-grid {row("map")}, {runs.Count} runs", row("sum_of_lengths").Number(), 0, () =>
            {
                var lengths = runs.Select(r => (Ours: cells.Between((r[0].Whole(), r[1].Whole()), (r[2].Whole(), r[3].Whole())).Length, Printed: r[4].Number())).ToList();
                return Sum(lengths, 1e-4);
            });
        }
    }

    private static void Polygons(string folder, InstanceTable table)
    {
        foreach (var group in InstanceFile.Rows(Path.Combine(folder, "best-known.csv")).GroupBy(r => r("polygons_file")))
        {
            var loops = InstanceFile.Rows(Path.Combine(folder, group.Key)).GroupBy(r => r("loop")).ToDictionary(g => g.Key, g => g.Select(r => new PlanePoint(r("x").Number(), r("y").Number())));
            var hasWall = group.Key.StartsWith("arena", StringComparison.Ordinal);
            var area = new FreeArea(hasWall ? [.. loops["0"]] : [], [.. loops.Where(l => !hasWall || l.Key != "0").Select(l => l.Value.ToArray()).Select(l => System.Collections.Immutable.ImmutableArray.Create(l))]);
            table.Row($"paths-polygon {group.Key}, {group.Count()} runs", group.Sum(r => r("exact_length").Number()), 0, () =>
            {
                var router = new FreeRouter(area);
                return Sum([.. group.Select(r => (router.Between(new(r("start_x").Number(), r("start_y").Number()), new(r("goal_x").Number(), r("goal_y").Number())).Metres, r("exact_length").Number()))], 1e-6);
            });
        }
    }

    private static (double Ours, double Bound) Sum(List<(double Ours, double Printed)> lengths, double printed) =>
        lengths.TrueForAll(l => Math.Abs(l.Ours - l.Printed) <= printed) ? (lengths.Sum(l => l.Ours), lengths.Sum(l => l.Ours)) : (double.NaN, double.NaN);

    private static (WireNet Net, List<int> Terminals) Net(string path)
    {
        var words = File.ReadLines(path).Select(l => l.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Where(w => w.Length > 0).ToList();
        return (
            new WireNet(words.First(w => w[0] == "Nodes")[1].Whole(), [.. words.Where(w => w[0] == "E" && w.Length == 4).Select(w => new NetPiece(w[1].Whole() - 1, w[2].Whole() - 1, w[3].Number()))]),
            [.. words.Where(w => w[0] == "T" && w.Length == 2).Select(w => w[1].Whole() - 1)]);
    }
}
