using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>A building is built in the maker's own way, or in the usual one again.</summary>
/// <param name="Building">Its key.</param>
/// <param name="Way">The way; none for the usual one.</param>
public sealed record BuildInOwnWay(string Building, BuildWay? Way) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => "Change the steps of a house";

    /// <inheritdoc/>
    public override Town Apply(Town town) => town with { Buildings = town.Buildings.Select(b => b.Key == Building ? b with { Way = Way } : b).ToItemList() };
}
