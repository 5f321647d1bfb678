using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>Where somebody stands to look at the town.</summary>
public sealed record ViewingPosition
{
    /// <summary>What the maker calls it.</summary>
    public required string Name { get; init; }

    /// <summary>Where they stand; may lie off the board.</summary>
    public required Point At { get; init; }

    /// <summary>Height of the eyes above the board.</summary>
    public Length? EyeHeight { get; init; }
}
