using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>One building more, after the others.</summary>
/// <param name="Added">The building; its key is no other's.</param>
public sealed record AddBuilding(Building Added) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => $"Add {Added.Name}";

    /// <summary>The building under a name that is free: "Cottage", or "Cottage 2" where there is one.</summary>
    /// <param name="town">The town.</param>
    /// <param name="building">The building; its id is not kept.</param>
    /// <returns>The edit.</returns>
    public static AddBuilding Named(Town town, Building building)
    {
        var taken = town.Buildings.Select(b => b.Key).ToHashSet(StringComparer.Ordinal);
        var name = building.Name;
        for (var i = 2; taken.Contains(Slug.Of(name)) || town.Buildings.Any(b => string.Equals(b.Name, name, StringComparison.OrdinalIgnoreCase)); i++)
        {
            name = $"{building.Name} {i}";
        }

        return new AddBuilding(building with { Name = name, Id = null });
    }

    /// <inheritdoc/>
    public override Town Apply(Town town) => town with { Buildings = town.Buildings.Append(Added).ToItemList() };
}
