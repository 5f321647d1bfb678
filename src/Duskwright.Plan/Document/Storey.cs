using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>One storey of a building.</summary>
public sealed record Storey
{
    /// <summary>What it is called: ground floor, loft.</summary>
    public string? Name { get; init; }

    /// <summary>From its floor to its ceiling.</summary>
    public Length? Height { get; init; }

    /// <summary>Its rooms.</summary>
    public ItemList<Room> Rooms { get; init; } = [];
}
