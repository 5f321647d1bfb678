using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>One closed box of light behind its windows.</summary>
public sealed record Room
{
    /// <summary>What it is called: taproom, stair.</summary>
    public string? Name { get; init; }

    /// <summary>Inside width along the building's front; the whole building's where nothing is said.</summary>
    public Length? Width { get; init; }

    /// <summary>Inside depth; the whole building's where nothing is said.</summary>
    public Length? Depth { get; init; }

    /// <summary>The finish inside, where it differs from the building's.</summary>
    public InteriorFinish? Finish { get; init; }

    /// <summary>Its lamps.</summary>
    public ItemList<Lamp> Lamps { get; init; } = [];

    /// <summary>Its windows.</summary>
    public ItemList<Window> Windows { get; init; } = [];
}
