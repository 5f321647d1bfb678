using System.Collections.Immutable;

namespace Duskwright.Calendar.Jobs;

/// <summary>One step at the bench, done in one go.</summary>
/// <remarks>A job with hands-on minutes lies wholly inside one session; a job of no minutes is a mark in the calendar and may lie anywhere.</remarks>
/// <param name="Id">Its name among all jobs.</param>
/// <param name="Minutes">Hands-on time, minutes; 0 or more.</param>
public sealed record Job(string Id, int Minutes)
{
    /// <summary>What the maker calls it in sentences; the id where nothing is said.</summary>
    public string Words { get; init; } = Id;

    /// <summary>What it takes while it is done, and perhaps while it dries.</summary>
    public ImmutableArray<Use> Uses { get; init; } = [];

    /// <summary>Minutes that it dries after the last hand is laid on, counted in the finish of the whole work; 0 or more.</summary>
    public int DryingMinutes { get; init; }

    /// <summary>The minute before which it cannot be begun, counted from the start of the calendar; 0 or more.</summary>
    public int NotBefore { get; init; }

    /// <summary>The house it belongs to; none where it serves several.</summary>
    public string? House { get; init; }
}
