using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>A building put somewhere else, or taken off the board. A route that is not laid yet no longer leads to it and is dropped.</summary>
/// <param name="Building">The building's key.</param>
/// <param name="Place">Where it is to stand; none takes it off the board.</param>
/// <param name="Words">The label.</param>
public sealed record MoveBuilding(string Building, Placement? Place, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <summary>Whether a building may be moved: one that is fixed, or whose pair is laid, stays where it is.</summary>
    /// <param name="town">The town.</param>
    /// <param name="building">The building's key.</param>
    /// <returns>Whether it may.</returns>
    public static bool May(Town town, string building) =>
        town.Buildings.Any(b => b.Key == building && b.State != BuildingState.Fixed) && !SharedRuns.Held(town).Contains(building);

    /// <summary>The same for every building at once.</summary>
    /// <param name="town">The town.</param>
    /// <returns>Whether each may be moved, by its key.</returns>
    public static IReadOnlyDictionary<string, bool> MayEach(Town town)
    {
        var laid = town.Routes.Where(r => r.Laid).Select(r => r.Building).ToHashSet(StringComparer.Ordinal);
        return town.Buildings.ToDictionary(b => b.Key, b => b.State != BuildingState.Fixed && !laid.Contains(b.Key), StringComparer.Ordinal);
    }

    /// <inheritdoc/>
    public override Town Apply(Town town) => !May(town, Building)
        ? town
        : SharedRuns.Kept(town with
        {
            Buildings = town.Buildings.Select(b => b.Key == Building ? b with { Place = Place } : b).ToItemList(),
            Routes = town.Routes.Where(r => r.Building != Building).ToItemList(),
        });
}
