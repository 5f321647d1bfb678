using System.Collections.Immutable;
using Duskwright.Harness.Routes;
using Duskwright.Plan.Document;

namespace Duskwright.Proposals.Wiring;

/// <summary>A board as the harness engine takes it, in metres.</summary>
internal static class BoardGround
{
    private const double UsualDetour = 1.4;
    private const double UsualSlackMetres = 0.25;

    internal static ImmutableArray<WirewayLine> Wireways(Town town)
    {
        var laid = town.Routes.Where(r => r.Laid).SelectMany(r => r.Wireways).Concat(town.Taps.Where(t => t.Laid).SelectMany(t => t.Wireways));
        var taken = laid.CountBy(id => id, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        return [.. town.Board!.Wireways.Select(w => new WirewayLine(w.Id, [.. w.Points.Select(InMetres)], w.Climb?.Metres ?? 0, w.CapacityPairs, taken.GetValueOrDefault(w.Id)))];
    }

    internal static RouteRules Rules(Town town) => new(town.Wiring.Slack?.Metres ?? UsualSlackMetres, town.Wiring.DetourFactor ?? UsualDetour);

    internal static RouteDemand Demand(Board board, Building building) => new(
        building.Key,
        InMetres(building.Place!.At),
        building.FeedHole is { } hole ? InMetres(board.FeedHoles.First(h => h.Id == hole).At) : null);

    internal static PlanePoint InMetres(Point point) => new(point.X.Metres, point.Y.Metres);
}
