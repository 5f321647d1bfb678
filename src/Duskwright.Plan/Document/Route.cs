using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>A way of a building's pair that the maker has accepted.</summary>
public sealed record Route
{
    /// <summary>The building it comes from.</summary>
    public required string Building { get; init; }

    /// <summary>Where the pair begins: a tap's id, or the key of the building it goes on from; none means the bank.</summary>
    public string? From { get; init; }

    /// <summary>Its line on the board, between the building and where the pair begins.</summary>
    public required ItemList<Point> Points { get; init; }

    /// <summary>Length of the pair to cut, slack included.</summary>
    public required Length Length { get; init; }

    /// <summary>The wire of the pair where it is not the building's own choice: a part's id.</summary>
    public string? Wire { get; init; }

    /// <summary>The wireways it uses, in order.</summary>
    public ItemList<string> Wireways { get; init; } = [];

    /// <summary>Whether the pair is laid, and so a given.</summary>
    public bool Laid { get; init; }
}
