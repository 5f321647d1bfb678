namespace Duskwright.Proposals.Sharing;

/// <summary>What a maker asks of a sharing beside the fewest packs.</summary>
public sealed record SharingWishes
{
    /// <summary>Share of its current that each pack keeps for what is built later, 0 or more.</summary>
    public double SpareShare { get; init; } = SharingProposal.SpareShare;

    /// <summary>How many packs like the town's own may be bought beside those it has. A town without packs gets as many as it needs.</summary>
    public int MorePacks { get; init; }

    /// <summary>Whether what hangs on one switch stays together and switches keep their names. They do in any case where scenes or single lamps name them.</summary>
    public bool KeepSwitches { get; init; }

    /// <summary>Whether of every two neighbours one stays lit when a pack fails, so that half of each street survives.</summary>
    public bool NeighboursApart { get; init; }
}
