using System.Globalization;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>Rows of a table taken into the town as one edit: buildings that are there are said anew, the others are added after them.</summary>
/// <param name="Buildings">The buildings as they are to be.</param>
/// <param name="SwitchGroups">Switches the rows name that the town does not have yet.</param>
public sealed record TakeRows(ItemList<Building> Buildings, ItemList<SwitchGroup> SwitchGroups) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => string.Create(CultureInfo.InvariantCulture, $"Take in {Buildings.Count} {(Buildings.Count == 1 ? "row" : "rows")}");

    /// <inheritdoc/>
    public override Town Apply(Town town)
    {
        var byKey = Buildings.ToDictionary(b => b.Key, StringComparer.Ordinal);
        var there = town.Buildings.Select(b => b.Key).ToHashSet(StringComparer.Ordinal);
        return town with
        {
            Buildings = town.Buildings.Select(b => byKey.GetValueOrDefault(b.Key, b)).Concat(Buildings.Where(b => !there.Contains(b.Key))).ToItemList(),
            SwitchGroups = town.SwitchGroups.Concat(SwitchGroups).ToItemList(),
        };
    }
}
