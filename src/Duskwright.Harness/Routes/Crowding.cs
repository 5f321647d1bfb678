using System.Collections.Immutable;

namespace Duskwright.Harness.Routes;

/// <summary>Takes pairs out of wireways that are fuller than they may be: those first that lose the least by another way, and never into a wireway that is full.</summary>
internal static class Crowding
{
    /// <summary>The ways after relief; a wireway stays too full only where no pair in it has another way.</summary>
    /// <param name="ways">The wireways.</param>
    /// <param name="answers">The shortest ways.</param>
    /// <param name="again">The way of a demand that keeps out of some wireways.</param>
    internal static ImmutableArray<RouteAnswer> Relieved(
        ImmutableArray<WirewayLine> ways, ImmutableArray<RouteAnswer> answers, Func<int, ImmutableSortedSet<string>, RouteAnswer> again)
    {
        var now = answers.ToArray();
        var given = new HashSet<string>(StringComparer.Ordinal);
        while (true)
        {
            var pairs = ways.ToDictionary(w => w.Id, w => w.TakenPairs + now.Count(a => a.Wireways.Contains(w.Id)), StringComparer.Ordinal);
            if (ways.FirstOrDefault(w => pairs[w.Id] > w.CapacityPairs && !given.Contains(w.Id)) is not { } crowded)
            {
                return [.. now];
            }

            var full = ways.Where(w => pairs[w.Id] >= w.CapacityPairs).Select(w => w.Id).ToImmutableSortedSet(StringComparer.Ordinal);
            var best = Enumerable.Range(0, now.Length)
                .Where(i => now[i].Wireways.Contains(crowded.Id))
                .Select(i => (Index: i, Other: again(i, full)))
                .Where(x => x.Other.NoRoute is null)
                .OrderBy(x => x.Other.LengthMetres - now[x.Index].LengthMetres)
                .ThenBy(x => x.Index)
                .Select(x => ((int, RouteAnswer)?)x)
                .FirstOrDefault();
            if (best is var (index, other))
            {
                now[index] = other;
            }
            else
            {
                given.Add(crowded.Id);
            }
        }
    }
}
