using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>How many equal lamps one pack carries before they look dim, fade or spoil, and by which criterion.</summary>
/// <param name="Lamp">The lamp, in words.</param>
/// <param name="VisiblyDimmer">From this many on, all lit together look visibly dimmer on fresh cells than one alone (ΔL* above the visible step).</param>
/// <param name="DimByEnd">From this many on, they fall below the dim share of one alone, fresh, before the show ends.</param>
/// <param name="SpoiledByEnd">From this many on, they fall below the spoiled share of one alone, fresh, before the show ends.</param>
/// <remarks>A count of <see cref="Most"/> means "that many or more".</remarks>
public sealed record Carrying(string Lamp, Figure VisiblyDimmer, Figure DimByEnd, Figure SpoiledByEnd)
{
    /// <summary>The largest count that is tried.</summary>
    public const int Most = 1000;
}
