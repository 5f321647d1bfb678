using Duskwright.Book.Sheets;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Proposals;
using Duskwright.Study;
using Duskwright.Study.Comparing;
using Duskwright.Study.Bench;

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

    /// <summary>What part of the book is meant by a word: "labels", "tonight", "tiles", "house:chandlery", "pack:3", or nothing for the whole.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="word">The word.</param>
    /// <returns>The choice; none where the word names nothing that is there.</returns>
    public static BookChoice? Choice(TownStudy study, string? word) => word?.Split(':', 2) switch
    {
        null or [""] => BookChoice.Whole,
        ["labels"] => BookChoice.Labels,
        ["tonight"] => Evening(study.Town) is { } day ? BookChoice.Evening(day) : null,
        [var id] when BenchBook.SheetWords(study).Contains(id) => BookChoice.Sheet(id),
        ["house", var key] when study.Buildings.Any(b => b.Building.Key == key && b.Lamps.Count > 0) => BookChoice.Building(key),
        ["pack", var id] when study.Packs.Any(p => p.Supply.Id == id && p.Lamps > 0) => BookChoice.Pack(id),
        _ => null,
    };

    /// <summary>The evening of the accepted calendar that comes next, today's included.</summary>
    /// <param name="town">The town.</param>
    /// <returns>The day; none where the calendar has nothing from today on.</returns>
    public static DateOnly? Evening(Town town)
    {
        var today = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
        return EveningWork.Left(town).Select(s => DateOnly.FromDateTime(s.Start)).Where(d => d >= today).Cast<DateOnly?>().Min();
    }

    /// <summary>The town as it was at a named point, for printing only what has changed since.</summary>
    /// <param name="open">The open town.</param>
    /// <param name="point">The point's name; none for the whole book.</param>
    /// <returns>The earlier printing; none where no point is meant.</returns>
    public static Printing? Since(OpenTown open, string? point) =>
        open.Points.LastOrDefault(p => p.Name == point) is { } named && open.Then(named) is { } then
            ? Printed(open.Study.After(then), named.Name, open.Study)
            : null;

    private static Printing Printed(TownStudy then, string name, TownStudy now)
    {
        var compared = TownsCompared.Of(then, now);
        return new Printing(then, name, compared.Changed.Concat(compared.Came).Select(c => c.Text).ToItemList());
    }
}
