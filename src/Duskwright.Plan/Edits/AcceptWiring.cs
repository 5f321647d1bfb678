using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>One switch wired anew: a pair to each house, a trunk with taps, or one pair from house to house. What is laid, and what it hangs on, stays.</summary>
/// <param name="SwitchGroup">The switch group's id.</param>
/// <param name="Routes">The pairs of its houses.</param>
/// <param name="Taps">The taps of its trunk.</param>
/// <param name="Words">The label.</param>
public sealed record AcceptWiring(string SwitchGroup, ItemList<Route> Routes, ItemList<Tap> Taps, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <inheritdoc/>
    public override Town Apply(Town town)
    {
        var held = SharedRuns.Held(town);
        var replaced = Routes.Select(r => r.Building).Where(b => !held.Contains(b)).ToHashSet(StringComparer.Ordinal);
        return SharedRuns.Kept(town with
        {
            Routes = town.Routes.Where(r => !replaced.Contains(r.Building)).Concat(Routes.Where(r => replaced.Contains(r.Building))).ToItemList(),
            Taps = town.Taps.Where(t => t.SwitchGroup != SwitchGroup || held.Contains(t.Id)).Concat(Taps).ToItemList(),
        });
    }
}
