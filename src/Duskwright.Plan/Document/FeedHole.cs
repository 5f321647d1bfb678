using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>A hole through which pairs leave the surface of the board.</summary>
public sealed record FeedHole
{
    /// <summary>How the hole is referred to.</summary>
    public required string Id { get; init; }

    /// <summary>Its centre.</summary>
    public required Point At { get; init; }

    /// <summary>The level it is bored through; none means the lowest.</summary>
    public string? Level { get; init; }

    /// <summary>Its bore, where it is drilled already.</summary>
    public Length? Bore { get; init; }

    /// <summary>Whether no further pair may go through it.</summary>
    public bool Shut { get; init; }
}
