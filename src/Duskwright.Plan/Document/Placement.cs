using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>Where a building stands and the ground it covers.</summary>
public sealed record Placement
{
    /// <summary>Where the middle of its footprint lies.</summary>
    public required Point At { get; init; }

    /// <summary>How far it is turned, counter-clockwise seen from above.</summary>
    public Angle Rotation { get; init; }

    /// <summary>The level it stands on; none means the lowest.</summary>
    public string? Level { get; init; }

    /// <summary>Along its front, before turning.</summary>
    public Length? Width { get; init; }

    /// <summary>From its front to its back, before turning.</summary>
    public Length? Depth { get; init; }

    /// <summary>Its outline about <see cref="At"/> before turning, where it is not a rectangle of width and depth.</summary>
    public ItemList<Point> Outline { get; init; } = [];

    /// <summary>Whether the footprint is round, of diameter <see cref="Width"/>.</summary>
    public bool Round { get; init; }
}
