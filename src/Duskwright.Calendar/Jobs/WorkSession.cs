namespace Duskwright.Calendar.Jobs;

/// <summary>A stretch of time in which hands may work: an evening, a Saturday.</summary>
/// <param name="From">Its first minute, counted from the start of the calendar.</param>
/// <param name="To">The minute it ends; work may last up to it and not beyond.</param>
public sealed record WorkSession(int From, int To);
