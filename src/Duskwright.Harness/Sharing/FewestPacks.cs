using System.Collections.Immutable;

namespace Duskwright.Harness.Sharing;

/// <summary>The fewest packs by columns: a pack with something pinned to it is in use already and costs nothing more, every other costs one.</summary>
internal static class FewestPacks
{
    // Steps of the weighing of one pack, capacity by kinds of load: as fine a grain as this allows, down to a microampere.
    private const long MostSteps = 1_000_000;

    // Towns are far smaller than published problems, and a maker waits.
    private static readonly ColumnSettings Quick = new(Rounds: 600, MostColumns: 4000, DeterministicSeconds: 1);

    /// <summary>Shares the loads.</summary>
    /// <returns>The pack of each load and what no sharing takes fewer than; none where the search found none.</returns>
    internal static (int[] PackOf, int AtLeast)? Share(SharingProblem problem, CancellationToken cancel)
    {
        var pinnedOn = problem.Packs.Select((_, p) => problem.Loads.Where(l => l.PinnedPack == p).Sum(l => (long)l.Microamperes)).ToList();
        if (pinnedOn.Where((sum, p) => sum > problem.Packs[p].CapacityMicroamperes).Any())
        {
            return null;
        }

        var begun = Enumerable.Range(0, problem.Packs.Length).Where(p => problem.Loads.Any(l => l.PinnedPack == p)).ToList();
        var packOf = problem.Loads.Select(l => l.PinnedPack ?? -1).ToArray();
        var free = Enumerable.Range(0, packOf.Length).Where(l => packOf[l] < 0).ToList();
        if (free.Count == 0)
        {
            return (packOf, begun.Count);
        }

        // Packs of one kind are interchangeable where nothing is pinned to them.
        var slots = begun.Select(p => new List<int> { p })
            .Concat(Enumerable.Range(0, problem.Packs.Length).Except(begun).GroupBy(p => problem.Packs[p].CapacityMicroamperes).Select(g => g.ToList()))
            .ToList();
        var room = slots.Select(s => problem.Packs[s[0]].CapacityMicroamperes - pinnedOn[s[0]]).ToList();
        var grains = Math.Max(1, MostSteps / free.Select(l => problem.Loads[l].Microamperes).Distinct().Count());
        var grain = (int)Math.Max(1, (problem.Packs.Max(p => p.CapacityMicroamperes) + grains - 1) / grains);
        var answer = ColumnSharing.Solve(Columns(up: true), Quick, cancel);
        if (answer.Packs.IsEmpty)
        {
            return null;
        }

        var next = new int[slots.Count];
        foreach (var filled in answer.Packs)
        {
            var pack = slots[filled.Kind][next[filled.Kind]++];
            foreach (var load in filled.Loads)
            {
                packOf[free[load]] = pack;
            }
        }

        // Loads rounded up may take a pack more than they do; the bound is of loads rounded down.
        var atLeast = grain == 1 ? answer.AtLeast : SumBound() >= answer.Cost ? answer.Cost : Math.Min(answer.Cost, ColumnSharing.Solve(Columns(up: false), Quick, cancel).AtLeast);
        return (packOf, begun.Count + (int)Math.Max(atLeast, SumBound()));

        ColumnProblem Columns(bool up)
        {
            ImmutableArray<int> take = [.. free.Select(l => (problem.Loads[l].Microamperes + (up ? grain - 1 : 0)) / grain)];
            return new ColumnProblem(
                [.. slots.Select((s, k) => new PackKind((int)((room[k] + (up ? 0 : grain - 1)) / grain), s.Count, k < begun.Count ? 0 : 1))],
                [.. slots.Select(_ => take)],
                [.. slots.Select(_ => free.Select(_ => 0L).ToImmutableArray())]);
        }

        // What the begun packs leave, spread over the greatest of the others.
        long SumBound()
        {
            var left = free.Sum(l => (long)problem.Loads[l].Microamperes) - room.Take(begun.Count).Sum();
            var others = room.Skip(begun.Count).DefaultIfEmpty(0).Max();
            return left <= 0 || others == 0 ? 0 : (left + others - 1) / others;
        }
    }
}
