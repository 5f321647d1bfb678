using Duskwright.Plan.Checks;

namespace Duskwright.Store;

/// <summary>What a list of towns tells of one: read without its houses, its history or a search for damage.</summary>
/// <param name="Name">The town's own name; none where the file cannot be read.</param>
/// <param name="Houses">How many houses it has.</param>
/// <param name="Problem">Why it cannot be read; none where it can.</param>
public sealed record TownGlance(string? Name, int Houses, Problem? Problem);
