using System.Globalization;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Edits;

/// <summary>A board of a size: a new one, or the one there is made larger or smaller.</summary>
/// <param name="Width">From the left edge to the right edge.</param>
/// <param name="Depth">From the front edge to the back edge.</param>
public sealed record SizeBoard(Length Width, Length Depth) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => string.Create(CultureInfo.InvariantCulture, $"A board of {Width.Millimetres:0} × {Depth.Millimetres:0} mm");

    /// <inheritdoc/>
    public override Town Apply(Town town) => town with
    {
        // A new board has its bank at the right of the front edge, where a hand reaches it.
        Board = (town.Board ?? new Board { Width = Width, Depth = Depth, Bank = Usual }) with
        {
            Width = Width,
            Depth = Depth,

            // To a bank off the board no wire has led yet: it stands at the edge anew.
            Bank = town.Board?.Bank is { } bank && (town.Routes.Count > 0 || (bank.At.X.Millimetres <= Width.Millimetres && bank.At.Y.Millimetres <= Depth.Millimetres)) ? bank : town.Board is null || town.Board.Bank is not null ? Usual : null,
        },
    };

    private Bank Usual => new() { At = Point.At(0.85 * Width.Millimetres, 0.05 * Depth.Millimetres) };
}
