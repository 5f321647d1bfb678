using System.Collections.Immutable;

namespace Duskwright.Harness.Sharing;

/// <summary>Loads to be shared among packs of several kinds, at the least cost.</summary>
/// <param name="Kinds">The kinds of pack.</param>
/// <param name="Take">What each load takes of a pack's capacity, whole units, by kind and then load; more than the capacity where it must not lie there.</param>
/// <param name="Cost">What each load costs there, whole units, by kind and then load.</param>
public sealed record ColumnProblem(
    ImmutableArray<PackKind> Kinds, ImmutableArray<ImmutableArray<int>> Take, ImmutableArray<ImmutableArray<long>> Cost)
{
    /// <summary>Packs of one kind, the fewest of them.</summary>
    /// <param name="take">What each load takes, whole units.</param>
    /// <param name="capacity">What a pack gives, whole units.</param>
    /// <param name="onHand">How many packs there are.</param>
    /// <returns>The problem; its cost is the number of packs.</returns>
    public static ColumnProblem Fewest(IEnumerable<int> take, int capacity, int onHand)
    {
        ImmutableArray<int> loads = [.. take];
        return new ColumnProblem([new PackKind(capacity, onHand, 1)], [loads], [[.. loads.Select(_ => 0L)]]);
    }
}

/// <summary>A kind of pack.</summary>
/// <param name="Capacity">What one gives, whole units; also the work of weighing up a pack, so units should not be needlessly fine.</param>
/// <param name="OnHand">How many there are.</param>
/// <param name="Cost">What using one costs, whole units.</param>
public sealed record PackKind(int Capacity, int OnHand, long Cost);

/// <summary>A sharing by columns.</summary>
/// <param name="Packs">Each pack in use: its kind and the loads on it; empty where no sharing was found.</param>
/// <param name="Cost">What it costs.</param>
/// <param name="AtLeast">What no sharing costs less than.</param>
public sealed record ColumnAnswer(ImmutableArray<FilledPack> Packs, long Cost, long AtLeast)
{
    /// <summary>Whether none costs less.</summary>
    public bool Proven => !Packs.IsEmpty && Cost == AtLeast;
}

/// <summary>One pack and what hangs on it.</summary>
/// <param name="Kind">Index of its kind.</param>
/// <param name="Loads">Indices of its loads.</param>
public sealed record FilledPack(int Kind, ImmutableArray<int> Loads);

/// <summary>How far the search goes, never by the clock.</summary>
/// <param name="Rounds">How many times packs are weighed up anew for the linear programme.</param>
/// <param name="MostColumns">How many fillings of a pack the whole-number solver is given.</param>
/// <param name="DeterministicSeconds">Its deterministic limit a call.</param>
public sealed record ColumnSettings(int Rounds = 2000, int MostColumns = 30_000, double DeterministicSeconds = 10);
