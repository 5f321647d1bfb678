namespace Duskwright.Calendar.Scheduling;

/// <summary>How the search is limited, never by the clock, so that it repeats exactly.</summary>
/// <param name="Seed">Seed of the solver.</param>
/// <param name="DeterministicLimit">The solver's own measure of work for the finish, about a second each; half as much is spent on half-built houses.</param>
/// <param name="MostExactJobs">Above so many jobs the rules alone schedule, and the bound tells the gap.</param>
/// <param name="FinishSlack">Minutes by which the rules may finish later than the earliest they find, for fewer half-built houses; 0 or more.</param>
public sealed record ScheduleSettings(int Seed = 7, double DeterministicLimit = 8, int MostExactJobs = 400, int FinishSlack = 0);
