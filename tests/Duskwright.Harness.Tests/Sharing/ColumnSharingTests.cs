using System.Collections.Immutable;
using Duskwright.Harness.Sharing;

namespace Duskwright.Harness.Tests.Sharing;

public class ColumnSharingTests
{
    // By hand: 7 + 3, 6 + 4, 5 + 5 fill three packs of 10; the sum is 30, so two cannot.
    [Fact]
    public void Three_packs_are_filled_exactly_and_that_is_proved()
    {
        var answer = Solve(ColumnProblem.Fewest([7, 6, 5, 5, 4, 3], 10, 6));
        Assert.Equal((3L, 3L, true), (answer.Cost, answer.AtLeast, answer.Proven));
    }

    // By hand: three loads of 6 on packs of 10: the sum of 18 would fit two packs, no two loads share one.
    [Fact]
    public void The_bound_sees_that_two_great_loads_do_not_share_a_pack() =>
        Assert.Equal(3, Solve(ColumnProblem.Fewest([6, 6, 6], 10, 6)).AtLeast);

    // Exact by trying every pack for every load; a load may cost something on a pack, or gain something there.
    [Fact]
    public void Unlike_packs_are_shared_as_cheaply_as_trying_everything_gives()
    {
        var random = new Random(11);
        for (var turn = 0; turn < 30; turn++)
        {
            ImmutableArray<PackKind> kinds = [.. Enumerable.Range(0, 3).Select(_ => new PackKind(random.Next(10, 16), 1, random.Next(0, 5)))];
            var problem = new ColumnProblem(
                kinds,
                [.. kinds.Select(_ => ImmutableArray.CreateRange(Enumerable.Range(0, 7).Select(_ => random.Next(2, 7))))],
                [.. kinds.Select(_ => ImmutableArray.CreateRange(Enumerable.Range(0, 7).Select(_ => (long)random.Next(-20, 20))))]);
            var exact = TryEverything(problem);
            var answer = Solve(problem);
            Assert.Equal(exact, answer.Packs.IsEmpty ? null : answer.Cost);
            if (exact is { } cost)
            {
                Assert.Equal(cost, answer.AtLeast);
                Assert.Equal(Enumerable.Range(0, 7), answer.Packs.SelectMany(p => p.Loads).Order());
                Assert.All(answer.Packs, p => Assert.True(p.Loads.Sum(i => problem.Take[p.Kind][i]) <= kinds[p.Kind].Capacity));
            }
        }
    }

    private static ColumnAnswer Solve(ColumnProblem problem) => ColumnSharing.Solve(problem, new ColumnSettings(), TestContext.Current.CancellationToken);

    private static long? TryEverything(ColumnProblem problem)
    {
        var (loads, kinds) = (problem.Take[0].Length, problem.Kinds.Length);
        long? best = null;
        for (var code = 0; code < Math.Pow(kinds, loads); code++)
        {
            var on = Enumerable.Range(0, loads).Select(i => code / (int)Math.Pow(kinds, i) % kinds).ToList();
            if (Enumerable.Range(0, kinds).All(k => on.Select((p, i) => p == k ? problem.Take[k][i] : 0).Sum() <= problem.Kinds[k].Capacity))
            {
                var cost = on.Select((p, i) => problem.Cost[p][i]).Sum() + on.Distinct().Sum(k => problem.Kinds[k].Cost);
                best = best is null ? cost : Math.Min(best.Value, cost);
            }
        }

        return best;
    }
}
