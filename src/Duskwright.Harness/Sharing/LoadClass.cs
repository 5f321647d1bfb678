using System.Collections.Immutable;

namespace Duskwright.Harness.Sharing;

/// <summary>Loads that are alike in every pack: they are counted, not told apart, which takes the symmetry out of the search.</summary>
internal sealed record LoadClass(ImmutableArray<int> Loads, ImmutableArray<int> Take, ImmutableArray<long> Cost)
{
    internal static ImmutableArray<LoadClass> Of(ColumnProblem problem) =>
    [
        .. Enumerable.Range(0, problem.Take[0].Length)
            .GroupBy(i => string.Join(' ', problem.Take.Select(t => t[i])) + "|" + string.Join(' ', problem.Cost.Select(c => c[i])))
            .Select(g => new LoadClass([.. g], [.. problem.Take.Select(t => t[g.First()])], [.. problem.Cost.Select(c => c[g.First()])])),
    ];
}

/// <summary>One way to fill a pack: how many loads of each class.</summary>
internal sealed record Filling(int Kind, ImmutableArray<int> Counts, long Cost)
{
    internal static Filling Of(int kind, int[] counts, ImmutableArray<LoadClass> classes, ImmutableArray<PackKind> kinds) =>
        new(kind, [.. counts], kinds[kind].Cost + counts.Select((n, i) => n * classes[i].Cost[kind]).Sum());

    internal string Key => $"{Kind}:{string.Join(',', Counts)}";
}
