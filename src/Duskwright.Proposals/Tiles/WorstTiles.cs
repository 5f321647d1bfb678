using System.Collections.Immutable;
using Duskwright.Harness.Tiles;
using Duskwright.Plan;
using Duskwright.Study;

namespace Duskwright.Proposals.Tiles;

/// <summary>How badly the tiles of one supply can be plugged together, every contact worn.</summary>
/// <param name="Supply">The supply's id.</param>
/// <param name="Tiles">The tiles.</param>
/// <param name="Worst">The arrangement in which a lamp keeps the least of its light.</param>
/// <param name="EachAtSocket">Each tile plugged straight into the socket or its frame, all of them there.</param>
/// <param name="MostLostVolts">What no arrangement of all or some of the tiles loses more than, V: steady currents at their most, in the worst row.</param>
/// <param name="Rows">How many rows were solved.</param>
/// <param name="Trees">How many other arrangements were solved.</param>
/// <param name="InRow">With how many tiles in a row, the heaviest of them, nobody sees a lamp become fainter.</param>
public sealed record WorstTiles(
    string Supply, ItemList<TileLoad> Tiles, TileArrangement Worst, TileArrangement EachAtSocket, double MostLostVolts, int Rows, int Trees, int InRow)
{
    // Solving all rows of six and all trees of five takes a second or so.
    private const int MostRows = 6;
    private const int MostTrees = 5;

    /// <summary>Whether every arrangement was solved.</summary>
    public bool IsEvery => Tiles.Count <= MostTrees;

    /// <summary>Whether every row was solved; else those that steady currents make the worst, one for each tile at the end.</summary>
    public bool IsEveryRow => Tiles.Count <= MostRows;

    /// <summary>Finds it for every supply that lights two tiles or more.</summary>
    /// <param name="study">The town's results; buildings name their tiles.</param>
    /// <param name="plugs">How tiles plug together.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <returns>One answer for each such supply.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ItemList<WorstTiles> Of(TownStudy study, TilePlugs plugs, CancellationToken cancel = default) => study.Packs
        .Where(p => p.Lamps > 0)
        .Select(p => new TileTrial(study, p.Supply.Id, plugs))
        .Zip(study.Packs.Where(p => p.Lamps > 0), (trial, pack) => (Trial: trial, pack.Supply.Id))
        .Where(x => x.Trial.Tiles.Length > 1)
        .Select(x => Of(x.Trial, x.Id, 100 - study.Town.Show.VisibleStep, cancel))
        .ToItemList();

    private static WorstTiles Of(TileTrial trial, string supply, double leastLightness, CancellationToken cancel)
    {
        var tiles = trial.Tiles.Length;
        ImmutableArray<double> amps = [.. trial.Tiles.Select(t => t.AloneAmps)];
        var (rows, trees) = (0, 0);
        TileArrangement? found = null;
        foreach (var row in tiles <= MostRows ? PluggedTiles.Rows(tiles) : Enumerable.Range(0, tiles).Select(t => PluggedTiles.Row(PluggedTiles.WorstRow(amps, t))))
        {
            cancel.ThrowIfCancellationRequested();
            rows++;
            found = Worse(found, trial.Of(row));
        }

        var worst = found!;

        if (tiles <= MostTrees)
        {
            foreach (var tree in PluggedTiles.Trees(tiles, TilePlugs.Sides))
            {
                cancel.ThrowIfCancellationRequested();
                trees++;
                worst = Worse(worst, trial.Of(tree));
            }

            // Each row is a tree as well.
            trees -= rows;
        }

        var inRow = Enumerable.Range(1, tiles).Reverse().FirstOrDefault(n => HeaviestRow(trial, [.. Enumerable.Range(0, tiles).OrderBy(t => amps[t])], n).Lightness >= leastLightness);
        return new WorstTiles(
            supply,
            trial.Tiles.ToItemList(),
            worst,
            trial.Of([.. Enumerable.Repeat(PluggedTiles.Socket, tiles)]),
            PluggedTiles.MostLostVolts(amps, trial.WornOhms),
            rows,
            trees,
            inRow);
    }

    // The heaviest so many in a row, the lightest of them first.
    private static TileArrangement HeaviestRow(TileTrial trial, List<int> lightestFirst, int count)
    {
        var gone = lightestFirst.Take(lightestFirst.Count - count).ToHashSet();
        var row = lightestFirst.Skip(gone.Count).ToList();
        return trial.Of(PluggedTiles.Row([.. row, .. lightestFirst.Take(gone.Count)]), gone);
    }

    private static TileArrangement Worse(TileArrangement? a, TileArrangement b) => a is null || b.LightShare < a.LightShare ? b : a;
}
