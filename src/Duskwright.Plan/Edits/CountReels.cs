using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>The reels of wire on hand, counted anew.</summary>
/// <param name="Reels">All of them after the change.</param>
/// <param name="Words">The label.</param>
public sealed record CountReels(ItemList<Reel> Reels, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <inheritdoc/>
    public override Town Apply(Town town) => town with { Reels = Reels };
}
