using System.Collections.Immutable;
using Duskwright.Harness.Tiles;

namespace Duskwright.Harness.Tests.Tiles;

public class PluggedTilesTests
{
    // Source: Cayley, A theorem on trees, Quarterly Journal of Pure and Applied Mathematics 23 (1889), pp. 376-378: (n+1)^(n-1) trees on n+1 knots, from memory
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 3)]
    [InlineData(3, 16)]
    [InlineData(4, 125)]
    [InlineData(5, 1296)]
    public void There_are_as_many_trees_as_Cayley_counted(int tiles, int trees)
    {
        var all = PluggedTiles.Trees(tiles, sides: 9).ToList();
        Assert.Equal(trees, all.Count);
        Assert.Equal(trees, all.Select(t => string.Join(',', t)).Distinct().Count());
    }

    [Fact]
    public void There_are_n_factorial_rows_and_a_tile_has_no_more_neighbours_than_sides()
    {
        Assert.Equal(720, PluggedTiles.Rows(6).Select(r => string.Join(',', r)).Distinct().Count());
        Assert.Equal(24, PluggedTiles.Rows(4).Count());
        Assert.All(PluggedTiles.Trees(5, sides: 3), t => Assert.All(Enumerable.Range(0, 5), i => Assert.True(t.Count(p => p == i) <= 2)));
    }

    // By hand, 1 ohm a plug: 10, 20 and 30 mA in a row lose 2·(60 + 50 + 30) = 280 mV at the end; with the heaviest first 2·(60 + 30 + 10) = 200 mV.
    [Fact]
    public void A_row_loses_what_Kirchhoff_says()
    {
        ImmutableArray<double> amps = [0.01, 0.02, 0.03];
        Assert.Equal([0.12, 0.22, 0.28], PluggedTiles.LostVolts(PluggedTiles.Row([0, 1, 2]), amps, 1).Select(v => Math.Round(v, 9)));
        Assert.Equal(0.2, PluggedTiles.LostVolts(PluggedTiles.Row([2, 1, 0]), amps, 1)[0], 1e-12);
        Assert.Equal(0.28, PluggedTiles.MostLostVolts(amps, 1), 1e-12);
    }

    [Fact]
    public void No_tree_of_some_tiles_loses_more_than_the_row_with_the_lightest_first()
    {
        var random = new Random(3);
        for (var scene = 0; scene < 30; scene++)
        {
            var tiles = random.Next(1, 6);
            ImmutableArray<double> amps = [.. Enumerable.Range(0, tiles).Select(_ => random.NextDouble() / 10)];
            var most = PluggedTiles.Trees(tiles, sides: 9).Max(t => PluggedTiles.LostVolts(t, amps, 0.3).Max());
            Assert.Equal(most, PluggedTiles.MostLostVolts(amps, 0.3), 1e-12);
            Assert.All(Enumerable.Range(0, tiles), t => Assert.Equal(
                PluggedTiles.Trees(tiles, sides: 9).Max(tree => PluggedTiles.LostVolts(tree, amps, 0.3)[t]),
                PluggedTiles.LostVolts(PluggedTiles.Row(PluggedTiles.WorstRow(amps, t)), amps, 0.3)[t],
                1e-12));
            Assert.True(PluggedTiles.MostLostVolts(amps[1..], 0.3) <= most);
        }
    }
}
