using System.Globalization;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Edits;

/// <summary>The scale of the photograph under the board, from two points on it and the distance between them in truth.</summary>
/// <remarks>
/// Where the photograph covers a board on which nothing stands or is drawn yet, the board takes the scale with it: the picture is all that is known of it.
/// Otherwise the first point stays where it lies.
/// </remarks>
/// <param name="One">The one point, as the photograph lies now.</param>
/// <param name="Other">The other.</param>
/// <param name="Apart">How far apart the two are on the board.</param>
public sealed record ScalePhotograph(Point One, Point Other, Length Apart) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => string.Create(CultureInfo.InvariantCulture, $"Scale the photograph: {Apart.Millimetres:0.#} mm between two points");

    private double Seen => Math.Sqrt(Math.Pow(Other.X.Millimetres - One.X.Millimetres, 2) + Math.Pow(Other.Y.Millimetres - One.Y.Millimetres, 2));

    /// <inheritdoc/>
    public override ItemList<Problem> Problems(Town town) =>
        town.Board?.Photograph is null ? [new Problem("board.photograph", "no-photograph", "There is no photograph under the board.", "Choose a picture first.")]
            : Seen <= 0 ? [new Problem("board.photograph", "one-point", "The two points are one.", "Put them far apart: the farther, the better the scale.")]
            : Apart.Millimetres <= 0 ? [new Problem("board.photograph", "distance", $"The two points cannot be {Apart.Millimetres} mm apart.", "Measure the distance on the board; more than 0 mm is allowed.")]
            : [];

    /// <inheritdoc/>
    public override Town Apply(Town town)
    {
        if (town.Board is not { Photograph: { } photograph } board || Seen <= 0)
        {
            return town;
        }

        var by = Apart.Millimetres / Seen;
        Length Scaled(Length length) => Length.FromMillimetres(Math.Round(length.Millimetres * by, 1));
        Point About(Point at, Point fixedPoint) => Point.At(
            Math.Round(fixedPoint.X.Millimetres + ((at.X.Millimetres - fixedPoint.X.Millimetres) * by), 1),
            Math.Round(fixedPoint.Y.Millimetres + ((at.Y.Millimetres - fixedPoint.Y.Millimetres) * by), 1));
        return IsAllThatIsKnown(town, board, photograph)
            ? town with
            {
                Board = board with
                {
                    Width = Scaled(board.Width),
                    Depth = Scaled(board.Depth),
                    Bank = board.Bank is { } bank ? bank with { At = About(bank.At, photograph.At) } : null,
                    Photograph = photograph with { Width = Scaled(photograph.Width), Depth = Scaled(photograph.Depth) },
                },
            }
            : town with { Board = board with { Photograph = photograph with { At = About(photograph.At, One), Width = Scaled(photograph.Width), Depth = Scaled(photograph.Depth) } } };
    }

    private static bool IsAllThatIsKnown(Town town, Board board, Photograph photograph) =>
        photograph.At == Point.At(0, 0) && photograph.Width == board.Width && photograph.Depth == board.Depth
        && board is { Levels.Count: 0, Scenery.Count: 0, Wireways.Count: 0, FeedHoles.Count: 0 }
        && !town.Buildings.Any(b => b.Place is not null);
}
