using System.Collections.Immutable;

namespace Duskwright.Calendar.Jobs;

/// <summary>Everything that is to be scheduled. All times are whole minutes from the start of the calendar.</summary>
/// <param name="Jobs">The jobs, in the order the maker would take them if nothing else decides.</param>
/// <param name="Lags">The waits between them.</param>
/// <param name="Resources">Hands, drying places.</param>
public sealed record BuildWork(ImmutableArray<Job> Jobs, ImmutableArray<Lag> Lags, ImmutableArray<Resource> Resources)
{
    /// <summary>When hands may work, in order and not overlapping; none at all means at any time.</summary>
    public ImmutableArray<WorkSession> Sessions { get; init; } = [];

    /// <summary>Houses that were begun before the calendar starts and so stand half built from its first minute.</summary>
    public ImmutableHashSet<string> BegunHouses { get; init; } = [];
}
