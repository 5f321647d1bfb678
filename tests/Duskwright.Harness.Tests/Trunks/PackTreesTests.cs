using System.Collections.Immutable;
using Duskwright.Harness.Trunks;

namespace Duskwright.Harness.Tests.Trunks;

public class PackTreesTests
{
    private static readonly PackTreeSettings Short = new(Moves: 20_000, Starts: 2);

    // Exact by trying every way to part seven buildings into groups, each with its shortest spanning tree.
    [Fact]
    public void Seven_buildings_are_wired_as_short_as_trying_everything_gives()
    {
        var random = new Random(8);
        for (var turn = 0; turn < 15; turn++)
        {
            var problem = Problem(random, buildings: 7, capacity: 10);
            var answer = PackTrees.Solve(problem, Short, TestContext.Current.CancellationToken);
            var exact = BestParting(problem, 1, []);
            Assert.Equal(exact, answer.Metres, 1e-9);
            Assert.True(answer.AtLeastMetres <= exact + 1e-9, $"bound {answer.AtLeastMetres} above {exact}");
            Assert.True(answer.AtLeastMetres > 0.6 * exact);
        }
    }

    [Fact]
    public void Each_building_is_fed_once_and_no_pack_is_overloaded()
    {
        var problem = Problem(new Random(9), buildings: 40, capacity: 25);
        var answer = PackTrees.Solve(problem, Short, TestContext.Current.CancellationToken);
        Assert.Equal(Enumerable.Range(1, 40), answer.Pieces.Select(p => p.To).Order());
        Assert.Equal(answer.Metres, answer.Pieces.Sum(p => problem.Metres[p.From][p.To]), 1e-9);
        var feeder = answer.Pieces.ToDictionary(p => p.To, p => p.From);
        int First(int i) => feeder[i] == 0 ? i : First(feeder[i]);
        Assert.All(Enumerable.Range(1, 40).GroupBy(First), tree => Assert.True(tree.Sum(i => problem.Load[i]) <= 25));
    }

    [Fact]
    public void The_same_question_has_the_same_trees()
    {
        var problem = Problem(new Random(10), buildings: 20, capacity: 15);
        Assert.Equal(
            PackTrees.Solve(problem, Short, TestContext.Current.CancellationToken).Pieces,
            PackTrees.Solve(problem, Short, TestContext.Current.CancellationToken).Pieces);
    }

    private static PackTreeProblem Problem(Random random, int buildings, int capacity)
    {
        var at = Enumerable.Range(0, buildings + 1).Select(_ => (X: random.NextDouble(), Y: random.NextDouble())).ToList();
        return new PackTreeProblem(
            [.. at.Select(a => ImmutableArray.CreateRange(at.Select(b => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2)))))],
            [0, .. Enumerable.Range(0, buildings).Select(_ => random.Next(1, 6))],
            capacity);
    }

    private static double BestParting(PackTreeProblem problem, int next, List<List<int>> groups)
    {
        if (next == problem.Load.Length)
        {
            return groups.Sum(g => Spanning(problem, g));
        }

        var best = double.PositiveInfinity;
        for (var g = 0; g <= groups.Count; g++)
        {
            if (g == groups.Count)
            {
                groups.Add([]);
            }

            if (groups[g].Sum(i => problem.Load[i]) + problem.Load[next] <= problem.Capacity)
            {
                groups[g].Add(next);
                best = Math.Min(best, BestParting(problem, next + 1, groups));
                groups[g].Remove(next);
            }

            if (groups[g].Count == 0)
            {
                groups.RemoveAt(g);
                break;
            }
        }

        return best;
    }

    private static double Spanning(PackTreeProblem problem, List<int> group)
    {
        var (joined, left, metres) = (new List<int> { 0 }, group.ToList(), 0.0);
        while (left.Count > 0)
        {
            var (length, next) = left.Select(i => (joined.Min(j => problem.Metres[i][j]), i)).Min();
            metres += length;
            joined.Add(next);
            left.Remove(next);
        }

        return metres;
    }
}
