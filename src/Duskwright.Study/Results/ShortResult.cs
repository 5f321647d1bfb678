using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>What the worst short circuit in the wiring of one pack would do.</summary>
public sealed record ShortResult
{
    /// <summary>The current it would drive, A.</summary>
    public required Figure Current { get; init; }

    /// <summary>The temperature the wire in the card would settle at, °C.</summary>
    public required Figure WireTemperature { get; init; }

    /// <summary>Heat at the short itself, W.</summary>
    public required Figure HotSpot { get; init; }

    /// <summary>Whether there is a fuse and it is sure to open on a dead short at the far end.</summary>
    public required bool FuseOpens { get; init; }

    /// <summary>The id of a fuse that carries the load and is sure to open; none where no fuse can.</summary>
    public string? SuggestedFuse { get; init; }
}
