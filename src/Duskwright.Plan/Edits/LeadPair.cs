using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>The hole a building's pair goes through, and the wireway it is to go along. Its route is dropped and may be suggested anew; a pair that is laid stays.</summary>
/// <param name="Building">The building's key.</param>
/// <param name="FeedHole">The hole; none for straight down.</param>
/// <param name="Wireway">The wireway; none for the shortest way.</param>
/// <param name="Words">The label.</param>
public sealed record LeadPair(string Building, string? FeedHole, string? Wireway, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <inheritdoc/>
    public override ItemList<Problem> Problems(Town town) => SharedRuns.Held(town).Contains(Building)
        ? [new Problem("routes", "laid", $"The pair of {town.Buildings.First(b => b.Key == Building).Name} is laid: it stays where it is.", "Say first that it is taken out again.")]
        : [];

    /// <inheritdoc/>
    public override Town Apply(Town town) => SharedRuns.Kept(town with
    {
        Buildings = town.Buildings.Select(b => b.Key == Building ? b with { FeedHole = FeedHole, Wireway = Wireway } : b).ToItemList(),
        Routes = town.Routes.Where(r => r.Building != Building).ToItemList(),
    });
}
