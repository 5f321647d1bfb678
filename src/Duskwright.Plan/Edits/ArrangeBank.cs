using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>Packs, switches and scenes of the bank, as the maker sets them out by hand.</summary>
/// <param name="Supplies">Every supply.</param>
/// <param name="SwitchGroups">Every switch.</param>
/// <param name="Scenes">Every scene.</param>
/// <param name="Words">The label.</param>
public sealed record ArrangeBank(ItemList<Supply> Supplies, ItemList<SwitchGroup> SwitchGroups, ItemList<Scene> Scenes, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <inheritdoc/>
    public override Town Apply(Town town) => SharedRuns.Kept(town with { Supplies = Supplies, SwitchGroups = SwitchGroups, Scenes = Scenes });

    /// <inheritdoc/>
    public override ItemList<Problem> Problems(Town town)
    {
        var kept = SwitchGroups.Select(g => g.Id).ToHashSet(StringComparer.Ordinal);
        return town.SwitchGroups.Where(g => !kept.Contains(g.Id))
            .Select(g => (Switch: g.Id, Houses: town.Buildings.Where(b => b.SwitchGroup == g.Id || b.DescribedLamps().Any(l => l.Lamp.SwitchGroup == g.Id)).Select(b => b.Name).ToList()))
            .Where(g => g.Houses.Count > 0)
            .Select(g => new Problem($"switch_groups/{g.Switch}", "switch-in-use", $"{(g.Houses.Count == 1 ? $"{g.Houses[0]} hangs" : $"{g.Houses[0]} and {g.Houses.Count - 1} more hang")} on switch {g.Switch}.", "Hang them on another switch first."))
            .ToItemList();
    }
}
