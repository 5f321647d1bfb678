using Duskwright.Plan;
using Duskwright.Study;

namespace Duskwright.Book.Sheets;

/// <summary>An earlier printing: only sheets that have changed since are printed again.</summary>
/// <param name="Study">The town's results as they were then.</param>
/// <param name="Words">When or what it was, in words: "12 November 2026".</param>
/// <param name="Changes">What has changed in the town since, a line each.</param>
public sealed record Printing(TownStudy Study, string Words, ItemList<string> Changes);
