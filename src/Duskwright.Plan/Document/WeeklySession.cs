namespace Duskwright.Plan.Document;

/// <summary>An evening or a part of the weekend that the maker keeps for the bench, every week.</summary>
public sealed record WeeklySession
{
    /// <summary>The day of the week.</summary>
    public required DayOfWeek Day { get; init; }

    /// <summary>When it begins.</summary>
    public required TimeOnly From { get; init; }

    /// <summary>How long it lasts, minutes; more than 0, ending by midnight.</summary>
    public required int Minutes { get; init; }
}
