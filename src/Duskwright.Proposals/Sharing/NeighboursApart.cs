using Duskwright.Harness.Sharing;
using Duskwright.Plan;

namespace Duskwright.Proposals.Sharing;

/// <summary>Shares so that of every two neighbours one stays lit when a pack fails: neighbours are put on two sides, and each side is shared over packs of its own.</summary>
/// <remarks>The bound is that of the sharing without the wish, which none with it can go below.</remarks>
internal static class NeighboursApart
{
    internal static (SharingAnswer Answer, ItemList<string> Notes) Solve(SharingProblem problem, CancellationToken cancel)
    {
        var loads = problem.Loads;
        var free = SharingSolver.Solve(problem, new SharingSettings(), cancel);
        if (free.Infeasible is not null)
        {
            return (free, []);
        }

        var pairs = Neighbours(problem);
        var sideOfPack = SidesOfBegunPacks(problem);
        var side = Sides(problem, pairs, sideOfPack);
        var packOf = new int[loads.Length];
        var taken = new HashSet<int>();
        foreach (var half in new[] { 0, 1 })
        {
            var here = Enumerable.Range(0, loads.Length).Where(l => side[l] == half).ToList();
            var packs = Enumerable.Range(0, problem.Packs.Length).Where(p => sideOfPack.TryGetValue(p, out var its) ? its == half : !taken.Contains(p)).ToList();
            var answer = SharingSolver.Solve(
                new SharingProblem([.. here.Select(l => loads[l] with { PinnedPack = loads[l].PinnedPack is { } pinned ? packs.IndexOf(pinned) : null })], [.. packs.Select(p => problem.Packs[p])]), new SharingSettings(), cancel);
            if (answer.Infeasible is not null)
            {
                return (free with { Infeasible = $"No two neighbours on one pack: {answer.Infeasible}; {free.PacksUsed} packs are enough where neighbours may share one" }, []);
            }

            foreach (var (load, pack) in here.Zip(answer.PackOf))
            {
                packOf[load] = packs[pack];
                taken.Add(packs[pack]);
            }
        }

        var used = packOf.Distinct().Count();
        var atLeast = Math.Max(free.PacksLowerBound, pairs.Count > 0 ? 2 : 1);
        var together = pairs.Where(p => packOf[p.A] == packOf[p.B]).Select(p => $"{loads[p.A].Id} and {loads[p.B].Id} are both to stay on pack {problem.Packs[packOf[p.A]].Id} and go dark together.");
        return (new SharingAnswer([.. packOf], used, Math.Min(used, atLeast), used == atLeast, null), together.ToItemList());
    }

    // Two and two, the nearest first.
    private static List<(int A, int B)> Neighbours(SharingProblem problem)
    {
        var loads = problem.Loads;
        var alone = Enumerable.Range(0, loads.Length).ToHashSet();
        var pairs = new List<(int, int)>();
        var all = from a in Enumerable.Range(0, loads.Length) from b in Enumerable.Range(a + 1, loads.Length - a - 1) select (A: a, B: b, Square: Math.Pow(loads[a].X - loads[b].X, 2) + Math.Pow(loads[a].Y - loads[b].Y, 2));
        foreach (var (a, b, _) in all.OrderBy(p => p.Square))
        {
            if (alone.Contains(a) && alone.Contains(b))
            {
                alone.Remove(a);
                alone.Remove(b);
                pairs.Add((a, b));
            }
        }

        return pairs;
    }

    // Packs that something is to stay on, the fuller ones first, each to the side that has less.
    private static Dictionary<int, int> SidesOfBegunPacks(SharingProblem problem)
    {
        var sums = new long[2];
        var sides = new Dictionary<int, int>();
        foreach (var pack in problem.Loads.Where(l => l.PinnedPack is not null).GroupBy(l => l.PinnedPack!.Value, l => (long)l.Microamperes).OrderByDescending(g => g.Sum()).ThenBy(g => g.Key))
        {
            var side = sums[0] <= sums[1] ? 0 : 1;
            sums[side] += pack.Sum();
            sides[pack.Key] = side;
        }

        return sides;
    }

    private static int[] Sides(SharingProblem problem, List<(int A, int B)> pairs, Dictionary<int, int> sideOfPack)
    {
        var loads = problem.Loads;
        var side = loads.Select(l => l.PinnedPack is { } pack ? sideOfPack[pack] : -1).ToArray();
        var sums = new long[2];
        for (var l = 0; l < side.Length; l++)
        {
            Count(l);
        }

        foreach (var (a, b) in pairs.OrderByDescending(p => Math.Abs(loads[p.A].Microamperes - loads[p.B].Microamperes)))
        {
            var (first, second) = loads[a].Microamperes >= loads[b].Microamperes ? (a, b) : (b, a);
            if (side[first] < 0 && side[second] < 0)
            {
                side[first] = sums[0] <= sums[1] ? 0 : 1;
                Count(first);
            }

            foreach (var (one, other) in new[] { (first, second), (second, first) })
            {
                if (side[other] < 0)
                {
                    side[other] = 1 - side[one];
                    Count(other);
                }
            }
        }

        foreach (var l in Enumerable.Range(0, side.Length).Where(l => side[l] < 0))
        {
            side[l] = sums[0] <= sums[1] ? 0 : 1;
            Count(l);
        }

        return side;

        void Count(int l)
        {
            if (side[l] >= 0)
            {
                sums[side[l]] += loads[l].Microamperes;
            }
        }
    }
}
