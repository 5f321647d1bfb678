using Duskwright.Book.Sheets;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Proposals;

namespace Duskwright.Towns;

/// <summary>How a town's book is printed today.</summary>
public static class BookToday
{
    /// <summary>Paper, date, and the routes that are suggested while none is taken.</summary>
    /// <param name="town">The town.</param>
    /// <param name="paper">The paper.</param>
    /// <returns>The options.</returns>
    public static BookOptions Of(Town town, PaperSize paper) =>
        new(paper, DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime)) { Suggested = Suggested(town) };

    /// <summary>The routes that are suggested while none is taken.</summary>
    /// <param name="town">The town.</param>
    /// <returns>Routes; empty where some are taken or the town has no board.</returns>
    public static ItemList<Plan.Document.Route> Suggested(Town town) => town.Routes.Count > 0 ? [] : RouteProposal.Of(town).Edit.Routes;
}
