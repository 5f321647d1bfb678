using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>The place at an edge of the board where packs and switches sit.</summary>
public sealed record Bank
{
    /// <summary>The middle of the bank, where pairs arrive.</summary>
    public required Point At { get; init; }

    /// <summary>Width of the pocket that holds the packs.</summary>
    public Length? PocketWidth { get; init; }

    /// <summary>Depth of the pocket that holds the packs.</summary>
    public Length? PocketDepth { get; init; }

    /// <summary>Height of the pocket that holds the packs.</summary>
    public Length? PocketHeight { get; init; }
}
