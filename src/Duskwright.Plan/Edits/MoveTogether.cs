using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>Some buildings moved by as much, as one edit. What is fixed or laid stays.</summary>
/// <param name="Places">Where each is to stand.</param>
/// <param name="Words">The label.</param>
public sealed record MoveTogether(ItemList<BuildingPlace> Places, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <inheritdoc/>
    public override Town Apply(Town town) => Places.Aggregate(town, (t, p) => new MoveBuilding(p.Building, p.Place, Words).Apply(t));
}

/// <summary>A building and where it stands.</summary>
/// <param name="Building">The building's key.</param>
/// <param name="Place">Where it is to stand.</param>
public sealed record BuildingPlace(string Building, Placement Place);
