namespace Duskwright.Plan.Document;

/// <summary>What one switch at the bank lights.</summary>
public sealed record SwitchGroup
{
    /// <summary>How the switch is labelled: "A".</summary>
    public required string Id { get; init; }

    /// <summary>What the maker calls it.</summary>
    public string? Name { get; init; }

    /// <summary>The supply it takes from; none means not yet shared out.</summary>
    public string? Supply { get; init; }
}
