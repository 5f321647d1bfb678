using System.Collections.Immutable;
using System.Globalization;
using Duskwright.Harness.Routes;
using Duskwright.Plan.Document;
using Duskwright.Study.Wiring;

namespace Duskwright.Proposals.Wiring;

/// <summary>A board as the harness engine takes it, in metres.</summary>
internal static class BoardGround
{
    internal static ImmutableArray<WirewayLine> Wireways(Town town)
    {
        var laid = town.Routes.Where(r => r.Laid).SelectMany(r => r.Wireways).Concat(town.Taps.Where(t => t.Laid).SelectMany(t => t.Wireways));
        var taken = laid.CountBy(id => id, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        return [.. town.Board!.Wireways.Select(w => new WirewayLine(w.Id, [.. w.Points.Select(InMetres)], w.Climb?.Metres ?? 0, w.CapacityPairs, taken.GetValueOrDefault(w.Id)))];
    }

    internal static RouteRules Rules(Town town) => new(PairAllowance.SlackMetres(town), PairAllowance.DetourFactor(town))
    {
        Around = ObstacleGround.Of(town),
        Free = [.. (town.Board?.Scenery ?? []).Where(s => s.Kind == SceneryKind.Free && s.Points.Count > 2).Select(s => s.Points.Select(InMetres).ToImmutableArray())],
    };

    internal static RouteDemand Demand(Board board, Building building) => new(
        building.Key,
        InMetres(building.Place!.At),
        building.FeedHole is { } hole ? InMetres(board.FeedHoles.First(h => h.Id == hole).At) : null,
        building.Wireway);

    /// <summary>Why a building's pair cannot go through the hole that is said; none where it can.</summary>
    internal static string? Shut(Board board, Building building)
    {
        if (building.FeedHole is not { } said || board.FeedHoles.First(h => h.Id == said) is not { Shut: true } || building.Place is not { } place)
        {
            return null;
        }

        var open = board.FeedHoles.Where(h => !h.Shut).Select(h => (h.Id, Metres: InMetres(h.At).DistanceTo(InMetres(place.At)))).OrderBy(h => h.Metres).ToList();
        return $"{building.Name}: hole {said} is shut; {(open.Count == 0 ? "there is no other hole, so drill one" : string.Create(CultureInfo.InvariantCulture, $"the nearest open one is {open[0].Id}, {1000 * open[0].Metres:0} mm away"))}.";
    }

    internal static PlanePoint InMetres(Point point) => new(point.X.Metres, point.Y.Metres);
}
