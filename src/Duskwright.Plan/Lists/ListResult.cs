using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Lists;

/// <summary>A list of buildings read: a town, or everything that keeps it from being one.</summary>
/// <param name="Town">The town; none where there are problems.</param>
/// <param name="Problems">All problems found; the path of each is a line: <c>line 3</c>.</param>
/// <param name="Assumptions">What was assumed because the list does not say it, one sentence each.</param>
public sealed record ListResult(Town? Town, ItemList<Problem> Problems, ItemList<string> Assumptions);
