using Duskwright.Plan;
using Duskwright.Plan.Document;

namespace Duskwright.Book.Plans;

/// <summary>What a board plan shows beside the town itself.</summary>
public sealed record BoardView
{
    /// <summary>Whether panes glow.</summary>
    public bool Dusk { get; init; }

    /// <summary>What is chosen: a building's key, or "pack:" and a supply's id.</summary>
    public string? Chosen { get; init; }

    /// <summary>The keys of buildings that are chosen together, to be moved as one.</summary>
    public ItemList<string> Together { get; init; } = [];

    /// <summary>Whether holes, wireways, scenery, the bank and the places to look from can be chosen and moved.</summary>
    public bool ByHand { get; init; }

    /// <summary>Whether the corners of the chosen building can be moved, where its ground has corners of its own.</summary>
    public bool Corners { get; init; }

    /// <summary>A line that is being drawn or measured; none where the hand draws nothing.</summary>
    public ItemList<Point> Draft { get; init; } = [];

    /// <summary>Routes that are only suggested.</summary>
    public ItemList<Route> Suggested { get; init; } = [];

    /// <summary>Wires drawn in place of the town's own; none for those of the town.</summary>
    public ItemList<Route>? Instead { get; init; }

    /// <summary>The ids of the taps that are drawn beside such wires; none leaves them out there, and draws all of them with the town's own.</summary>
    public ItemList<string>? Taps { get; init; }

    /// <summary>The keys of the buildings in their places; none for all of them.</summary>
    public ItemList<string>? Standing { get; init; }

    /// <summary>Whether label codes and the lengths of pairs stand under the names, as on paper.</summary>
    public bool WithLengths { get; init; }

    /// <summary>Where the page finds the photograph under the board; none where none is shown.</summary>
    public string? Photograph { get; init; }

    /// <summary>Millimetres of board to a millimetre of paper, for its words and lines; a small board takes fewer.</summary>
    public double Pen { get; init; } = 4.5;
}
