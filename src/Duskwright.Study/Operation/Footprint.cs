using System.Collections.Immutable;
using Duskwright.Harness.Routes;
using Duskwright.Plan.Document;

namespace Duskwright.Study.Operation;

/// <summary>The ground a building covers.</summary>
internal static class Footprint
{
    private const int CornersOfRound = 24;

    /// <summary>Its corners on the board, m; none where its size is not said.</summary>
    internal static ImmutableArray<PlanePoint> Of(Placement place)
    {
        var (sin, cos) = Math.SinCos(place.Rotation.Radians);
        return
        [
            .. Plain(place).Select(p => new PlanePoint(
                place.At.X.Metres + (p.X * cos) - (p.Y * sin),
                place.At.Y.Metres + (p.X * sin) + (p.Y * cos))),
        ];
    }

    private static IEnumerable<(double X, double Y)> Plain(Placement place)
    {
        if (place.Outline.Count > 0)
        {
            return place.Outline.Select(p => (p.X.Metres, p.Y.Metres));
        }

        if (place.Width is not { } width)
        {
            return [];
        }

        if (place.Round)
        {
            return Enumerable.Range(0, CornersOfRound).Select(i => (width.Metres / 2 * Math.Cos(i * Math.Tau / CornersOfRound), width.Metres / 2 * Math.Sin(i * Math.Tau / CornersOfRound)));
        }

        var (x, y) = (width.Metres / 2, (place.Depth ?? width).Metres / 2);
        return [(-x, -y), (x, -y), (x, y), (-x, y)];
    }
}
