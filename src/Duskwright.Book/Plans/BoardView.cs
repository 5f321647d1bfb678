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

    /// <summary>Routes that are only suggested.</summary>
    public ItemList<Route> Suggested { get; init; } = [];

    /// <summary>Whether label codes and the lengths of pairs stand under the names, as on paper.</summary>
    public bool WithLengths { get; init; }

    /// <summary>Millimetres of board to a millimetre of paper.</summary>
    public double Pen { get; init; } = 4.5;
}
