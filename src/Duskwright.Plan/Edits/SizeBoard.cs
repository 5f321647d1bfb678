using System.Globalization;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Edits;

/// <summary>A board of a size: a new one, or the one there is made larger or smaller.</summary>
/// <param name="Width">From the left edge to the right edge.</param>
/// <param name="Depth">From the front edge to the back edge.</param>
public sealed record SizeBoard(Length Width, Length Depth) : TownEdit
{
    private const double HalfPocketMillimetres = 40;

    /// <inheritdoc/>
    public override string Label => string.Create(CultureInfo.InvariantCulture, $"A board of {Width.Millimetres:0} × {Depth.Millimetres:0} mm");

    /// <inheritdoc/>
    public override Town Apply(Town town) => town with
    {
        // A new board has its bank at the right of the front edge, where a hand reaches it.
        Board = (town.Board ?? new Board { Width = Width, Depth = Depth, Bank = Usual(Width, Depth) }) with
        {
            Width = Width,
            Depth = Depth,

            // A bank off the board, or one that nobody has moved and no wire leads to, stands at the edge anew.
            Bank = town.Board is not { } before ? Usual(Width, Depth)
                : before.Bank is { } bank && town.Routes.Count == 0 && (bank.At.X.Millimetres > Width.Millimetres || bank.At.Y.Millimetres > Depth.Millimetres || bank == Usual(before.Width, before.Depth)) ? Usual(Width, Depth)
                : before.Bank,
        },
    };

    // Its pocket, where nobody has said how deep it is, lies wholly on the board.
    private static Bank Usual(Length width, Length depth) => new() { At = Point.At(0.85 * width.Millimetres, Math.Min(Math.Max(0.05 * depth.Millimetres, HalfPocketMillimetres), depth.Millimetres / 2)) };
}
