namespace Duskwright.Plan.Document;

/// <summary>Which switches are on together.</summary>
public sealed record Scene
{
    /// <summary>What the maker calls it: late evening.</summary>
    public required string Name { get; init; }

    /// <summary>The switch groups that are on.</summary>
    public required ItemList<string> On { get; init; }
}
