using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>A way from a building to the bank that the maker has accepted.</summary>
public sealed record Route
{
    /// <summary>The building it comes from.</summary>
    public required string Building { get; init; }

    /// <summary>Its line on the board, from the building to the bank.</summary>
    public required ItemList<Point> Points { get; init; }

    /// <summary>Length of the pair to cut, slack included.</summary>
    public required Length Length { get; init; }

    /// <summary>The wireways it uses, in order.</summary>
    public ItemList<string> Wireways { get; init; } = [];

    /// <summary>Whether the pair is laid, and so a given.</summary>
    public bool Laid { get; init; }
}
