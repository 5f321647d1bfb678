namespace Duskwright.Proposals;

/// <summary>An evening or a part of the weekend that the maker keeps for the bench, every week.</summary>
/// <param name="Day">The day of the week.</param>
/// <param name="From">When it begins.</param>
/// <param name="Minutes">How long it lasts, minutes; more than 0, ending by midnight.</param>
public sealed record WeeklySession(DayOfWeek Day, TimeOnly From, int Minutes);
