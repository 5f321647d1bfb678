using System.Collections.Immutable;

namespace Duskwright.Calendar.Scheduling;

/// <summary>A schedule, or why there is none.</summary>
/// <param name="Status">What is known about it.</param>
/// <param name="Starts">The minute each job is begun, in the order of the jobs; empty where there is no schedule.</param>
/// <param name="Finish">The minute all is done and dry.</param>
/// <param name="FinishBound">No schedule is done and dry before this minute.</param>
/// <param name="HousesHalfBuilt">The most houses that are begun and not ended at one time.</param>
/// <param name="HousesHalfBuiltBound">With this finish no schedule has fewer half-built houses at its worst time.</param>
/// <param name="Why">Why there is no schedule, one sentence; none where there is one.</param>
public sealed record Schedule(ScheduleStatus Status, ImmutableArray<int> Starts, int Finish, int FinishBound, int HousesHalfBuilt, int HousesHalfBuiltBound, string? Why)
{
    /// <summary>Minutes by which the finish may be later than need be.</summary>
    public int Gap => Finish - FinishBound;

    /// <summary>Houses that are begun and not ended when a session ends, summed over the sessions; 0 where there are no sessions.</summary>
    public int HalfBuiltEvenings { get; init; }

    /// <summary>No schedule, whatever its finish, has a smaller sum.</summary>
    public int HalfBuiltEveningsBound { get; init; }

    internal static Schedule None(ScheduleStatus status, string why, int finishBound = 0) => new(status, [], 0, finishBound, 0, 0, why);
}

/// <summary>What is known about a schedule.</summary>
public enum ScheduleStatus
{
    /// <summary>No schedule finishes earlier: proved.</summary>
    Earliest,

    /// <summary>A sound schedule; an earlier finish is not excluded, and the bound says by how much.</summary>
    Found,

    /// <summary>There is no schedule: proved.</summary>
    Impossible,

    /// <summary>The limit was reached, or the search was stopped, before any schedule was found.</summary>
    NotFound,
}
