using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Format;

/// <summary>A document read: a town, or everything that keeps it from being one.</summary>
/// <param name="Town">The town; none where there are problems.</param>
/// <param name="Problems">All problems found.</param>
public sealed record TownReadResult(Town? Town, ItemList<Problem> Problems);
