using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>One level of ground on the board.</summary>
public sealed record Level
{
    /// <summary>How the level is referred to.</summary>
    public required string Id { get; init; }

    /// <summary>What the maker calls it: quay, upper town.</summary>
    public string? Name { get; init; }

    /// <summary>Height of its ground above the lowest ground.</summary>
    public Length Height { get; init; }

    /// <summary>The ground it covers; none means the whole board.</summary>
    public ItemList<Point> Outline { get; init; } = [];
}
