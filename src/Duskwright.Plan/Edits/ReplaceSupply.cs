using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>Another pack, adaptor or fuse in the place of one that is there.</summary>
/// <param name="Replacement">The supply as it is to be; its id names the one it replaces.</param>
/// <param name="Words">The label.</param>
public sealed record ReplaceSupply(Supply Replacement, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <inheritdoc/>
    public override Town Apply(Town town) =>
        town with { Supplies = town.Supplies.Select(s => s.Id == Replacement.Id ? Replacement : s).ToItemList() };
}
