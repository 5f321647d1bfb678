using System.Collections.Immutable;

namespace Duskwright.Harness.Laying;

/// <summary>Finds rounds of houses that cover one another's wire, and the fewest pairs to pull first so that none is left.</summary>
internal static class Knots
{
    // Beyond so many tries the busiest house of the knot is taken, one after another.
    private const int MostTries = 20_000;

    /// <summary>The knots among the houses to come; <paramref name="before"/> holds for each house those that may only follow it.</summary>
    internal static List<(List<int> Round, List<int> First, bool Exact)> Of(IReadOnlyList<IReadOnlyList<int>> before)
    {
        var knots = new List<(List<int>, List<int>, bool)>();
        foreach (var tied in Tied(before).Where(t => t.Count > 1))
        {
            var (first, exact) = Fewest(before, tied);
            knots.Add((ShortestRound(before, tied), first, exact));
        }

        return knots;
    }

    private static (List<int> First, bool Exact) Fewest(IReadOnlyList<IReadOnlyList<int>> before, List<int> tied)
    {
        var tries = 0;
        for (var size = 1; size < tied.Count; size++)
        {
            foreach (var some in Choices(tied, size, 0))
            {
                if (++tries > MostTries)
                {
                    return (Busiest(before, tied), false);
                }

                if (IsFree(before, [.. tied.Except(some)]))
                {
                    return (some, true);
                }
            }
        }

        return (tied, true);
    }

    private static List<int> Busiest(IReadOnlyList<IReadOnlyList<int>> before, List<int> tied)
    {
        var (left, first) = (tied.ToHashSet(), new List<int>());
        while (!IsFree(before, left))
        {
            var busiest = left.MaxBy(h => before[h].Count(left.Contains) * left.Count(x => before[x].Contains(h)));
            left.Remove(busiest);
            first.Add(busiest);
        }

        return first;
    }

    private static IEnumerable<List<int>> Choices(List<int> of, int size, int from)
    {
        if (size == 0)
        {
            yield return [];
            yield break;
        }

        for (var i = from; i <= of.Count - size; i++)
        {
            foreach (var rest in Choices(of, size - 1, i + 1))
            {
                yield return [of[i], .. rest];
            }
        }
    }

    private static bool IsFree(IReadOnlyList<IReadOnlyList<int>> before, HashSet<int> among)
    {
        var left = among.ToHashSet();
        while (left.Count > 0)
        {
            var free = left.Where(h => !left.Any(x => before[x].Contains(h))).ToList();
            if (free.Count == 0)
            {
                return false;
            }

            left.ExceptWith(free);
        }

        return true;
    }

    private static List<int> ShortestRound(IReadOnlyList<IReadOnlyList<int>> before, List<int> tied) => tied
        .Select(start =>
        {
            var from = new Dictionary<int, int>();
            var queue = new Queue<int>([start]);
            while (queue.TryDequeue(out var at))
            {
                foreach (var next in before[at].Where(tied.Contains))
                {
                    if (next == start)
                    {
                        var round = new List<int>();
                        for (var back = at; back != start; back = from[back])
                        {
                            round.Add(back);
                        }

                        round.Add(start);
                        round.Reverse();
                        return round;
                    }

                    if (from.TryAdd(next, at))
                    {
                        queue.Enqueue(next);
                    }
                }
            }

            return tied;
        })
        .MinBy(r => r.Count)!;

    // Two houses are tied where each is reached from the other.
    private static List<List<int>> Tied(IReadOnlyList<IReadOnlyList<int>> before)
    {
        var reach = before.Select((_, h) => Reached(before, h)).ToList();
        var (groups, taken) = (new List<List<int>>(), new HashSet<int>());
        for (var h = 0; h < before.Count; h++)
        {
            if (taken.Add(h))
            {
                var group = Enumerable.Range(0, before.Count).Where(x => x == h || (reach[h].Contains(x) && reach[x].Contains(h))).ToList();
                taken.UnionWith(group);
                groups.Add(group);
            }
        }

        return groups;
    }

    private static HashSet<int> Reached(IReadOnlyList<IReadOnlyList<int>> before, int from)
    {
        var reached = new HashSet<int>();
        var stack = new Stack<int>(before[from]);
        while (stack.TryPop(out var at))
        {
            if (reached.Add(at))
            {
                foreach (var next in before[at])
                {
                    stack.Push(next);
                }
            }
        }

        return reached;
    }
}
