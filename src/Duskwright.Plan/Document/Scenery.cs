using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>Something drawn on the board that carries no lamp.</summary>
public sealed record Scenery
{
    /// <summary>What it is.</summary>
    public required SceneryKind Kind { get; init; }

    /// <summary>A word to write beside it.</summary>
    public string? Label { get; init; }

    /// <summary>One point for a tree, a line for a path, an outline for water.</summary>
    public required ItemList<Point> Points { get; init; }

    /// <summary>Breadth of a path or spread of a tree.</summary>
    public Length? Size { get; init; }
}

/// <summary>Kinds of scenery.</summary>
public enum SceneryKind
{
    /// <summary>A tree or bush, at one point.</summary>
    Tree,

    /// <summary>Water, an outline.</summary>
    Water,

    /// <summary>A quay wall or shore, a line.</summary>
    Quay,

    /// <summary>A jetty of planks, a line with a breadth.</summary>
    Jetty,

    /// <summary>A path or street, a line with a breadth.</summary>
    Path,

    /// <summary>Steps from level to level, a line with a breadth.</summary>
    Steps,

    /// <summary>Garden beds or fields, an outline.</summary>
    Field,

    /// <summary>Barrels, crates, nets: small clutter at a point.</summary>
    Clutter,

    /// <summary>Something wire cannot pass: a batten, leg or magnet under the board, an outline.</summary>
    Obstacle,

    /// <summary>An opening in the board or its edge through which a hand reaches the wires, an outline.</summary>
    Hatch,

    /// <summary>A free area under the board in which pairs may leave the wireways and lie anywhere, an outline.</summary>
    Free,
}
