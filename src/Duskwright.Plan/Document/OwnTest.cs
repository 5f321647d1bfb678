namespace Duskwright.Plan.Document;

/// <summary>A test that the maker sets behind a step of their own.</summary>
public sealed record OwnTest
{
    /// <summary>What to touch to what.</summary>
    public required string Words { get; init; }

    /// <summary>How many lamps of the house must light, from 0; none for all of them.</summary>
    public int? Lit { get; init; }

    /// <summary>Whether it must be passed before the next step that seals.</summary>
    public bool BeforeSeal { get; init; }
}
