using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Towns;

/// <summary>Where on the board there is room for a building more.</summary>
public static class FreePlace
{
    private const double UsualSide = 60;
    private const double Street = 12;
    private const double Step = 20;

    /// <summary>The first free place from the middle of the board outwards.</summary>
    /// <param name="town">A town with a board.</param>
    /// <param name="building">The building; the size of its footprint is kept.</param>
    /// <returns>The place; the middle of the board where all is full.</returns>
    public static Placement For(Town town, Building building)
    {
        var (width, depth) = (town.Board!.Width.Millimetres, town.Board.Depth.Millimetres);
        var radius = Math.Ceiling(Reach(building.Place));
        var taken = town.Buildings.Where(b => b.Place is not null && b.Key != building.Key).Select(b => (X: b.Place!.At.X.Millimetres, Y: b.Place.At.Y.Millimetres, Reach: Reach(b.Place))).ToList();
        var free =
            from x in Between(radius, width - radius)
            from y in Between(radius, depth - radius)
            where taken.TrueForAll(t => Away(t.X - x, t.Y - y) > t.Reach + radius + Street)
            orderby Away(x - (width / 2), y - (depth / 2))
            select Point.At(x, y);
        return (building.Place ?? new Placement { At = Point.At(0, 0), Width = Length.FromMillimetres(UsualSide), Depth = Length.FromMillimetres(UsualSide) }) with
        {
            At = free.FirstOrDefault() ?? Point.At(width / 2, depth / 2),
        };
    }

    private static double Reach(Placement? place) => Away(place?.Width?.Millimetres ?? UsualSide, place?.Depth?.Millimetres ?? place?.Width?.Millimetres ?? UsualSide) / 2;

    private static double Away(double x, double y) => Math.Sqrt((x * x) + (y * y));

    private static IEnumerable<double> Between(double from, double to)
    {
        for (var at = from; at <= to; at += Step)
        {
            yield return at;
        }
    }
}
