namespace Duskwright.Plan.Document;

/// <summary>A step with its place in the accepted calendar.</summary>
public sealed record CalendarStep
{
    /// <summary>The building's key.</summary>
    public required string Building { get; init; }

    /// <summary>The step's key.</summary>
    public required string Step { get; init; }

    /// <summary>When it is begun.</summary>
    public required DateTime Start { get; init; }

    /// <summary>Hands-on time, minutes; a step longer than a session stands several times.</summary>
    public required int Minutes { get; init; }
}
