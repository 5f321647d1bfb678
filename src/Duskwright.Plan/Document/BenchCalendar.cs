namespace Duskwright.Plan.Document;

/// <summary>When the maker works at the bench, and the calendar that was accepted for it.</summary>
public sealed record BenchCalendar
{
    /// <summary>The evenings and weekend hours of every week.</summary>
    public ItemList<WeeklySession> Sessions { get; init; } = [];

    /// <summary>Pairs of hands.</summary>
    public int Hands { get; init; } = 1;

    /// <summary>How many buildings have room to dry at once; none where there is room for all.</summary>
    public int? DryingPlaces { get; init; }

    /// <summary>The steps in order of time.</summary>
    public ItemList<CalendarStep> Steps { get; init; } = [];

    /// <summary>When all is done and dry by this calendar.</summary>
    public DateTime? Finish { get; init; }

    /// <summary>The moment before which no order of the steps is done and dry.</summary>
    public DateTime? FinishAtEarliest { get; init; }
}
