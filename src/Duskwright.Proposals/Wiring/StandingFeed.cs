using System.Collections.Immutable;
using Duskwright.Harness.Feeds;
using Duskwright.Harness.Routes;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Proposals.Wiring;

/// <summary>Pairs that the document already has, as the harness engine takes them.</summary>
internal static class StandingFeed
{
    /// <summary>A tree with the standing pairs of some houses added, and of what they hang on.</summary>
    internal static LaidFeed Added(FeedTree tree, TownStudy study, string group, IReadOnlyCollection<BuildingResult> houses)
    {
        var town = study.Town;
        var starts = SharedRuns.Starts(town);
        var routes = town.Routes.ToDictionary(r => r.Building, StringComparer.Ordinal);
        var taps = town.Taps.Where(t => t.SwitchGroup == group).ToDictionary(t => t.Id, StringComparer.Ordinal);
        var results = houses.ToDictionary(h => h.Building.Key, StringComparer.Ordinal);
        var junctions = new Dictionary<string, int>(StringComparer.Ordinal);
        var next = tree.Pieces.Select(p => p.To).DefaultIfEmpty(0).Max() + 1;
        var pieces = new List<FeedPiece>();
        var wires = new List<WirePart>();

        foreach (var house in houses)
        {
            _ = Junction(house.Building.Key);
        }

        var all = tree with
        {
            Pieces = [.. tree.Pieces, .. pieces],
            Ends = [.. tree.Ends, .. houses.Select(h => new FeedEnd(h.Building.Key, junctions[h.Building.Key]))],
            AtLeastMetres = tree.AtLeastMetres + pieces.Sum(p => p.Metres),
        };
        return new LaidFeed(all, wires.ToItemList());

        int Junction(string run)
        {
            if (junctions.TryGetValue(run, out var known))
            {
                return known;
            }

            var from = starts.TryGetValue(run, out var start) && (taps.ContainsKey(start) || results.ContainsKey(start)) ? Junction(start) : 0;
            var piece = taps.TryGetValue(run, out var tap)
                ? new FeedPiece(from, next, tap.Length.Metres, Line(tap.Points), [.. tap.Wireways])
                : routes.TryGetValue(run, out var route)
                ? new FeedPiece(from, next, results[run].PairLength.Value, Line(route.Points), [.. route.Wireways])
                : new FeedPiece(from, next, results[run].PairLength.Value, [], []);
            pieces.Add(piece);
            wires.Add(tap is null ? results[run].Wire : tap.Wire is { } said ? Catalogue.FindWire(town, said)! : study.UsualWire);
            return junctions[run] = next++;
        }
    }

    /// <summary>In which way a switch is wired as it stands.</summary>
    internal static FeedWay Way(Town town, string group, IEnumerable<string> houses)
    {
        var starts = SharedRuns.Starts(town);
        return town.Taps.Any(t => t.SwitchGroup == group) ? FeedWay.Trunk : houses.Any(starts.ContainsKey) ? FeedWay.Chain : FeedWay.OwnPairs;
    }

    private static ImmutableArray<PlanePoint> Line(ItemList<Point> points) => [.. points.Select(BoardGround.InMetres)];
}
