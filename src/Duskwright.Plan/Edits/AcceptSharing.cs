using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>A suggested sharing taken into the town: supplies, switches, and which building hangs on which switch.</summary>
/// <param name="Supplies">All supplies after the change.</param>
/// <param name="SwitchGroups">All switch groups after the change.</param>
/// <param name="GroupOfBuilding">The switch group of each building that moves, by building key.</param>
public sealed record AcceptSharing(
    ItemList<Supply> Supplies,
    ItemList<SwitchGroup> SwitchGroups,
    ItemList<BuildingOnGroup> GroupOfBuilding) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => $"Share the lamps over {Supplies.Count} packs like this";

    /// <inheritdoc/>
    public override Town Apply(Town town)
    {
        var group = GroupOfBuilding.ToDictionary(g => g.Building, g => g.SwitchGroup, StringComparer.Ordinal);
        return SharedRuns.Kept(town with
        {
            Supplies = Supplies,
            SwitchGroups = SwitchGroups,
            Buildings = town.Buildings
                .Select(b => group.TryGetValue(b.Key, out var id) ? b with { SwitchGroup = id } : b)
                .ToItemList(),
        });
    }
}

/// <summary>A building and the switch group it hangs on.</summary>
/// <param name="Building">The building's key.</param>
/// <param name="SwitchGroup">The switch group's id.</param>
public sealed record BuildingOnGroup(string Building, string SwitchGroup);
