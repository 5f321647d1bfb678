using Duskwright.Harness.Routes;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals.Wiring;

namespace Duskwright.Proposals.Growth;

/// <summary>The pair that leads to a tap, cut in two by another tap. Both pieces have the slack for their joints.</summary>
internal static class TapCut
{
    // A pencil line: what lies nearer runs in the wireway.
    private const double InWayMetres = 0.001;

    internal static (Tap Before, Tap Beyond) Of(Tap tap, string id, double share, PlanePoint at, double slackMetres, Board board)
    {
        var line = tap.Points.Select(BoardGround.InMetres).ToList();
        var drawn = line.Zip(line.Skip(1), (a, b) => a.DistanceTo(b)).Sum();
        var (first, walked) = (new List<PlanePoint> { line[0] }, 0.0);
        for (var i = 1; i < line.Count && walked + line[i - 1].DistanceTo(line[i]) < share * drawn; i++)
        {
            walked += line[i - 1].DistanceTo(line[i]);
            first.Add(line[i]);
        }

        List<PlanePoint> second = [at, .. line.Skip(first.Count)];
        first.Add(at);
        var length = Math.Max(0, tap.Length.Metres - slackMetres);
        Tap Piece(Tap of, List<PlanePoint> points, double part) => of with
        {
            Points = points.Select(p => Point.At(Math.Round(1000 * p.X, 1), Math.Round(1000 * p.Y, 1))).ToItemList(),
            Length = Length.FromMillimetres(Math.Round(1000 * ((part * length) + slackMetres))),
            Wireways = tap.Wireways.Where(w => board.Wireways.Any(x => x.Id == w && RunsIn(points, x))).ToItemList(),
        };
        return (Piece(tap with { Id = id }, first, share), Piece(tap with { From = id }, second, 1 - share));
    }

    private static bool RunsIn(List<PlanePoint> points, Wireway way)
    {
        var line = way.Points.Select(BoardGround.InMetres).ToList();
        return points.Zip(points.Skip(1), (a, b) => new PlanePoint((a.X + b.X) / 2, (a.Y + b.Y) / 2))
            .Any(p => line.Zip(line.Skip(1), (a, b) => p.DistanceTo(p.NearestOn(a, b))).Any(d => d < InWayMetres));
    }
}
