using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>What the worst short circuit in the wiring of one pack would do, with the fuse it has or with none.</summary>
public sealed record ShortResult
{
    /// <summary>The current of the lasting short that heats the wire most, A.</summary>
    public required Figure Current { get; init; }

    /// <summary>The temperature the wire in the card would settle at, °C.</summary>
    public required Figure WireTemperature { get; init; }

    /// <summary>Most heat at the short itself, W.</summary>
    public required Figure HotSpot { get; init; }

    /// <summary>Whether the wire would reach the temperature at which card browns.</summary>
    public required bool Scorches { get; init; }

    /// <summary>Whether there is a fuse and it is sure to open on a dead short, near and far, with fresh and with worn cells.</summary>
    public required bool FuseOpens { get; init; }

    /// <summary>The fuse to fit and what it leaves of the danger; none where no fuse both carries the load and is sure to open.</summary>
    public FuseAdvice? Advice { get; init; }
}

/// <summary>A fuse to fit.</summary>
/// <param name="Fuse">The fuse.</param>
/// <param name="WireTemperature">The temperature at which the wire in the card settles on the worst short that can then last, °C.</param>
/// <param name="HotSpot">Most heat at a short that can then last, W.</param>
public sealed record FuseAdvice(FusePart Fuse, Figure WireTemperature, Figure HotSpot);
