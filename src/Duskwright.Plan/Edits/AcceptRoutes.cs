using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>Suggested routes taken into the town. A route that is laid stays as it is.</summary>
/// <param name="Routes">The routes, one a building.</param>
public sealed record AcceptRoutes(ItemList<Route> Routes) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Routes.Count == 1 ? "Take this route" : $"Take these {Routes.Count} routes";

    /// <inheritdoc/>
    public override Town Apply(Town town)
    {
        var held = SharedRuns.Held(town);
        var given = town.Routes.Select(r => r.Building).Where(held.Contains).ToHashSet(StringComparer.Ordinal);
        var taken = Routes.Where(r => !given.Contains(r.Building)).ToList();
        var replaced = taken.Select(r => r.Building).ToHashSet(StringComparer.Ordinal);
        return SharedRuns.Kept(town with { Routes = town.Routes.Where(r => !replaced.Contains(r.Building)).Concat(taken).ToItemList() });
    }
}
