using Duskwright.Harness.Routes;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals.Wiring;

namespace Duskwright.Proposals;

/// <summary>Suggested routes for the pairs of a town with a board, and the buildings for which there is none.</summary>
/// <param name="Edit">The edit that takes the routes; nothing is changed until it is applied.</param>
/// <param name="NoRoute">One sentence for each building that cannot reach the bank.</param>
public sealed record RouteProposal(AcceptRoutes Edit, ItemList<string> NoRoute)
{
    /// <summary>One sentence for each wireway that holds more pairs than it takes because they have no other way.</summary>
    public ItemList<string> Crowded { get; init; } = [];

    /// <summary>All wire of the routes, both conductors.</summary>
    public Length Wire => Length.FromMillimetres(2 * Edit.Routes.Sum(r => r.Length.Millimetres));

    /// <summary>Finds the shortest way along the wireways for every building that carries lamps and whose pair is not laid. Pairs that are shared stay as the maker decided.</summary>
    /// <param name="town">The town.</param>
    /// <returns>The proposal; empty for a town without a board and a bank.</returns>
    public static RouteProposal Of(Town town)
    {
        if (town.Board is not { Bank: { } bank } board)
        {
            return new RouteProposal(new AcceptRoutes([]), []);
        }

        var laid = town.Routes.Where(r => r.Laid).Select(r => r.Building).ToHashSet(StringComparer.Ordinal);
        var starts = SharedRuns.Starts(town);
        var shared = starts.Keys.Concat(starts.Values).ToHashSet(StringComparer.Ordinal);
        var open = town.Buildings
            .Where(b => b.Place is not null && !laid.Contains(b.Key) && !shared.Contains(b.Key) && (b.Leds > 0 || b.DescribedLamps().Any()))
            .ToLookup(b => BoardGround.Shut(board, b));
        var demands = open[null].Select(b => BoardGround.Demand(board, b));
        var ways = BoardGround.Wireways(town);
        var answers = Router.Route(ways, [.. demands], BoardGround.InMetres(bank.At), BoardGround.Rules(town));
        var names = town.Buildings.ToDictionary(b => b.Key, b => b.Name, StringComparer.Ordinal);
        return new RouteProposal(
            new AcceptRoutes(answers.Where(a => a.NoRoute is null).Select(a => new Route
            {
                Building = a.Building,
                Points = a.Points.Select(p => Point.At(Math.Round(p.X * 1000, 1), Math.Round(p.Y * 1000, 1))).ToItemList(),
                Length = Length.FromMillimetres(Math.Round(a.LengthMetres * 1000)),
                Wireways = a.Wireways.ToItemList(),
            }).ToItemList()),
            answers.Where(a => a.NoRoute is not null).Select(a => a.NoRoute!.Replace(a.Building, names[a.Building], StringComparison.Ordinal)).Concat(open.Select(s => s.Key).OfType<string>()).ToItemList())
        {
            Crowded = ways
                .Select(w => (Way: w, Pairs: w.TakenPairs + answers.Count(a => a.Wireways.Contains(w.Id))))
                .Where(x => x.Pairs > x.Way.CapacityPairs)
                .Select(x => $"Wireway {x.Way.Id} takes {x.Way.CapacityPairs} pairs and {x.Pairs} have no other way: make it wider, or draw another beside it.")
                .ToItemList(),
        };
    }
}
