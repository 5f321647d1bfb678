using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>The board: its size, what is drawn on it, where wire can run under it, and where the bank is.</summary>
public sealed record Board
{
    /// <summary>From the left edge to the right edge.</summary>
    public required Length Width { get; init; }

    /// <summary>From the front edge to the back edge.</summary>
    public required Length Depth { get; init; }

    /// <summary>The levels of the ground, lowest first; none means one flat level.</summary>
    public ItemList<Level> Levels { get; init; } = [];

    /// <summary>Water, cliffs, quays, trees and other things that are drawn and carry no lamp.</summary>
    public ItemList<Scenery> Scenery { get; init; } = [];

    /// <summary>The ways along which pairs may run.</summary>
    public ItemList<Wireway> Wireways { get; init; } = [];

    /// <summary>The holes through which pairs leave the surface.</summary>
    public ItemList<FeedHole> FeedHoles { get; init; } = [];

    /// <summary>Where the packs and switches are.</summary>
    public Bank? Bank { get; init; }

    /// <summary>A photograph of it, to draw over.</summary>
    public Photograph? Photograph { get; init; }
}
