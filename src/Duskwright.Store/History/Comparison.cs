using Duskwright.Plan;
using Duskwright.Plan.Checks;

namespace Duskwright.Store.History;

/// <summary>Two states of a town compared.</summary>
/// <param name="Differences">What differs, in order of path.</param>
/// <param name="Problems">What kept them from being compared.</param>
public sealed record Comparison(ItemList<Difference> Differences, ItemList<Problem> Problems);
