using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Proposals.Growth;

/// <summary>A free place for a small house beside one that stands.</summary>
public static class PlaceBeside
{
    // A small house, and an alley between it and its neighbour; common practice, no source.
    private const double WidthMillimetres = 50;
    private const double AlleyMillimetres = 12;

    // Footprints the maker has not drawn are taken as those of a small house.
    private const double UsualMillimetres = 60;

    private static readonly double ReachMillimetres = WidthMillimetres * Math.Sqrt(0.5);

    /// <summary>Looks to the right, left, back and front and then farther out for ground that nothing stands on.</summary>
    /// <param name="town">The town.</param>
    /// <param name="neighbour">A building that is placed.</param>
    /// <returns>The place, turned as the neighbour is and on its level; none where the board is full all round it.</returns>
    public static Placement? Of(Town town, Building neighbour)
    {
        if (town.Board is not { } board || neighbour.Place is not { } place)
        {
            return null;
        }

        var standing = town.Buildings.Where(b => b.Place is not null).Select(b => b.Place!).ToList();
        var (halfWidth, halfDepth) = Half(place);
        var (cos, sin) = (Math.Cos(place.Rotation.Degrees * Math.PI / 180), Math.Sin(place.Rotation.Degrees * Math.PI / 180));
        for (var step = 1; step <= 5; step++)
        {
            foreach (var (x, y) in new[] { (1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (-1, 1), (1, -1), (-1, -1) })
            {
                var (right, back) = (x * (halfWidth + (WidthMillimetres / 2) + (step * AlleyMillimetres)), y * (halfDepth + (WidthMillimetres / 2) + (step * AlleyMillimetres)));
                var at = Point.At(
                    Math.Round(place.At.X.Millimetres + (right * cos) - (back * sin)),
                    Math.Round(place.At.Y.Millimetres + (right * sin) + (back * cos)));
                if (OnBoard(board, at) && standing.All(p => p == place || Apart(p, at) >= ReachMillimetres))
                {
                    return new Placement { At = at, Level = place.Level, Rotation = place.Rotation, Width = Length.FromMillimetres(WidthMillimetres), Depth = Length.FromMillimetres(WidthMillimetres) };
                }
            }
        }

        return null;
    }

    private static bool OnBoard(Board board, Point at) =>
        at.X.Millimetres >= ReachMillimetres && at.X.Millimetres <= board.Width.Millimetres - ReachMillimetres
        && at.Y.Millimetres >= ReachMillimetres && at.Y.Millimetres <= board.Depth.Millimetres - ReachMillimetres;

    private static (double Width, double Depth) Half(Placement place) =>
        ((place.Width?.Millimetres ?? UsualMillimetres) / 2, (place.Depth?.Millimetres ?? place.Width?.Millimetres ?? UsualMillimetres) / 2);

    // From a point to the nearest wall of a footprint, mm; 0 inside it.
    private static double Apart(Placement place, Point at)
    {
        var (x, y) = (at.X.Millimetres - place.At.X.Millimetres, at.Y.Millimetres - place.At.Y.Millimetres);
        var (cos, sin) = (Math.Cos(place.Rotation.Degrees * Math.PI / 180), Math.Sin(place.Rotation.Degrees * Math.PI / 180));
        var (halfWidth, halfDepth) = Half(place);
        return Math.Sqrt(Math.Pow(Math.Max(0, Math.Abs((x * cos) + (y * sin)) - halfWidth), 2) + Math.Pow(Math.Max(0, Math.Abs((y * cos) - (x * sin)) - halfDepth), 2));
    }
}
