using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>A joint under the board where a shared pair branches to houses or to further taps, with the pair that leads to it.</summary>
public sealed record Tap
{
    /// <summary>How the tap is referred to and labelled: "TA1". No building has the same key.</summary>
    public required string Id { get; init; }

    /// <summary>The switch group it carries.</summary>
    public required string SwitchGroup { get; init; }

    /// <summary>Where its pair begins: another tap's id, or the key of the building it goes on from; none means the bank.</summary>
    public string? From { get; init; }

    /// <summary>The line of its pair on the board, from where it begins to the tap; none where it is not drawn.</summary>
    public ItemList<Point> Points { get; init; } = [];

    /// <summary>Length of its pair to cut, slack included.</summary>
    public required Length Length { get; init; }

    /// <summary>The wire of its pair: a part's id; the town's usual wire where nothing is said.</summary>
    public string? Wire { get; init; }

    /// <summary>The wireways it uses, in order.</summary>
    public ItemList<string> Wireways { get; init; } = [];

    /// <summary>Whether the pair is laid, and so a given.</summary>
    public bool Laid { get; init; }
}
