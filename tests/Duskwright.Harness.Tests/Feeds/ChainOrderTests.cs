using Duskwright.Harness.Feeds;

namespace Duskwright.Harness.Tests.Feeds;

public class ChainOrderTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Seven_houses_are_chained_as_short_as_trying_every_order_does(int seed)
    {
        var metres = Scattered(8, seed);
        var (order, length, atLeast) = ChainOrder.Shortest(metres);
        var least = Orders([.. Enumerable.Range(1, 7)]).Min(o => o.Prepend(0).Zip(o, (a, b) => metres[a][b]).Sum());
        Assert.Equal(least, length, 9);
        Assert.Equal(least, atLeast, 9);
        Assert.Equal(Enumerable.Range(1, 7), order.Order());
    }

    [Fact]
    public void Forty_houses_in_a_row_are_called_at_in_their_order()
    {
        var places = Enumerable.Range(0, 41).Select(i => i == 0 ? 0 : ((i * 17) % 41)).ToList();
        var metres = places.Select(a => places.Select(b => (double)Math.Abs(a - b)).ToArray()).ToArray();
        var (order, length, atLeast) = ChainOrder.Shortest(metres);
        Assert.Equal(Enumerable.Range(1, 40), order.Select(i => places[i]));
        Assert.Equal(40, length, 9);
        Assert.Equal(40, atLeast, 9);
    }

    private static double[][] Scattered(int count, int seed)
    {
        var random = new Random(seed);
        var points = Enumerable.Range(0, count).Select(_ => (X: random.NextDouble(), Y: random.NextDouble())).ToList();
        return [.. points.Select(a => points.Select(b => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2))).ToArray())];
    }

    private static IEnumerable<List<int>> Orders(List<int> left) =>
        left.Count == 0 ? [[]] : left.SelectMany(first => Orders([.. left.Where(x => x != first)]).Select(rest => (List<int>)[first, .. rest]));
}
