using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Edits;

/// <summary>A photograph laid under the drawing, changed, or taken away with none.</summary>
/// <param name="Photograph">The photograph as it is to be.</param>
/// <param name="Words">The label.</param>
public sealed record LayPhotograph(Photograph? Photograph, string Words) : TownEdit
{
    private const double UsualWidthMillimetres = 1200;

    /// <inheritdoc/>
    public override string Label => Words;

    /// <summary>A picture laid as large as the board; where there is no board yet, one of its proportions begins, to be scaled.</summary>
    /// <param name="town">The town.</param>
    /// <param name="picture">The picture's id; the one that lies there already keeps its place and scale.</param>
    /// <param name="across">Its breadth, in any unit.</param>
    /// <param name="high">Its height, in the same unit.</param>
    /// <returns>The edit.</returns>
    public static LayPhotograph Fitted(Town town, string picture, double across, double high)
    {
        if (town.Board?.Photograph is { } lies && lies.Picture == picture)
        {
            return new LayPhotograph(lies with { Hidden = false }, "Show the photograph");
        }

        // Wholly on the board, from its front left corner.
        var width = town.Board is { } board ? Math.Min(board.Width.Millimetres, board.Depth.Millimetres * across / high) : UsualWidthMillimetres;
        return new LayPhotograph(new Photograph { Picture = picture, At = Point.At(0, 0), Width = Length.FromMillimetres(width), Depth = Length.FromMillimetres(width * high / across) }, "Lay a photograph under the board");
    }

    /// <inheritdoc/>
    public override Town Apply(Town town) =>
        Photograph is { } begins && town.Board is null && new SizeBoard(begins.Width, begins.Depth).Apply(town) is { Board: { } begun } withBoard
            ? withBoard with { Board = begun with { Photograph = begins } }
            : town.Board is { } board ? town with { Board = board with { Photograph = Photograph } } : town;
}
