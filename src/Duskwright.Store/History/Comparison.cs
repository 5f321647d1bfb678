using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Store.History;

/// <summary>Two states of a town compared.</summary>
/// <param name="Differences">What differs, in order of path.</param>
/// <param name="Problems">What kept them from being compared.</param>
public sealed record Comparison(ItemList<Difference> Differences, ItemList<Problem> Problems)
{
    /// <summary>Compares two towns.</summary>
    /// <param name="before">The one.</param>
    /// <param name="after">The other.</param>
    /// <returns>What differs from the one to the other.</returns>
    public static ItemList<Difference> Between(Town before, Town after) => History.Differences.Between(Entities.Of(before), Entities.Of(after));
}
