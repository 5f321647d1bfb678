using Duskwright.Harness.Routes;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Study.Lists;

/// <summary>The way of a pair as it is drawn on the board.</summary>
internal static class DrawnWay
{
    // So far beside a wireway's own line may a point on it be drawn: points are rounded to a tenth of a millimetre.
    private const double RoundedMetres = 1e-4;

    /// <summary>What a pair is longer than its way as drawn, climbs between levels counted.</summary>
    /// <returns>Metres; none where no way is drawn.</returns>
    internal static double? SlackMetres(Town town, ItemList<Point> points, ItemList<string> wireways, Length length)
    {
        var climbing = (town.Board?.Wireways ?? []).Where(w => w.Climb is not null && wireways.Contains(w.Id)).ToList();
        return points.Count < 2 ? null : length.Metres - points.Zip(points.Skip(1), (a, b) => Distance(a, b) * (1 + climbing.Select(w => SteepnessAlong(w, a, b)).DefaultIfEmpty(0).Max())).Sum();
    }

    internal static string Words(ItemList<string> wireways, string? hole) => string.Join(", ", (string[])
    [
        .. wireways.Count > 0 ? [$"along {string.Join(", ", wireways)}"] : Array.Empty<string>(),
        .. hole is null ? Array.Empty<string>() : [$"up through hole {hole}"],
    ]);

    // A wireway climbs evenly over its length.
    private static double SteepnessAlong(Wireway way, Point a, Point b)
    {
        var pieces = way.Points.Zip(way.Points.Skip(1)).ToList();
        return pieces.Exists(p => IsOn(a, p.First, p.Second) && IsOn(b, p.First, p.Second)) ? way.Climb!.Value.Metres / pieces.Sum(p => Distance(p.First, p.Second)) : 0;
    }

    private static bool IsOn(Point point, Point from, Point to) => InPlane(point).DistanceTo(InPlane(point).NearestOn(InPlane(from), InPlane(to))) < RoundedMetres;

    private static double Distance(Point a, Point b) => InPlane(a).DistanceTo(InPlane(b));

    private static PlanePoint InPlane(Point point) => new(point.X.Metres, point.Y.Metres);
}
