using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>A reel of wire that the maker has on hand.</summary>
public sealed record Reel
{
    /// <summary>The wire on it: a part's id.</summary>
    public required string Wire { get; init; }

    /// <summary>How much is left on it, one conductor.</summary>
    public required Length Left { get; init; }
}
