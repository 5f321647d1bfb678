using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>Some buildings said anew: another resistor, another switch, a detail filled in.</summary>
/// <param name="Changed">The buildings as they are to be; each replaces the one of its key.</param>
/// <param name="Words">The label.</param>
public sealed record ChangeBuildings(ItemList<Building> Changed, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <inheritdoc/>
    public override Town Apply(Town town)
    {
        var byKey = Changed.ToDictionary(b => b.Key, StringComparer.Ordinal);
        return SharedRuns.Kept(town with { Buildings = town.Buildings.Select(b => byKey.GetValueOrDefault(b.Key, b)).ToItemList() });
    }
}
