using Duskwright.Plan.Document;

namespace Duskwright.Plan.Checks;

/// <summary>Everything in a town that cannot be. What is merely unwise is no problem here: it is computed and reported.</summary>
public static class TownChecks
{
    /// <summary>Looks through the whole town.</summary>
    /// <param name="town">The town.</param>
    /// <returns>All problems, in the order of the document; empty for a sound one.</returns>
    public static ItemList<Problem> Of(Town town) =>
    [
        .. BoardChecks.Of(town),
        .. BuildingChecks.Of(town),
        .. SupplyChecks.Of(town),
        .. ReferenceChecks.Of(town),
        .. SharedRunChecks.Of(town),
        .. ShowChecks.Of(town),
        .. OwnPartChecks.Of(town),
        .. CalendarChecks.Of(town),
        .. WayChecks.Of(town),
        .. LogChecks.Of(town),
    ];
}
