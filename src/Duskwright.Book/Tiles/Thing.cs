using Duskwright.Book.Drawings;
using Duskwright.Book.Plans;
using SkiaSharp;

namespace Duskwright.Book.Tiles;

/// <summary>Something on the board that tiles show.</summary>
/// <param name="Marks">How it is drawn.</param>
/// <param name="Box">The box about it, lines of no width.</param>
internal sealed record Thing(IReadOnlyList<Mark> Marks, SKRect Box)
{
    /// <summary>What stands on it.</summary>
    internal Label? Name { get; init; }

    /// <summary>What stands beside it.</summary>
    internal IReadOnlyList<Label> Lines { get; init; } = [];

    internal static Thing Of(params Stroke[] strokes)
    {
        var box = SKRect.Empty;
        foreach (var stroke in strokes)
        {
            using var path = SKPath.ParseSvgPathData(stroke.Path);

            // A straight line has a box of no height, which meets no tile; half a millimetre is the line itself.
            var its = SKRect.Inflate(path.Bounds, 0.25f, 0.25f);
            box = box.IsEmpty ? its : SKRect.Union(box, its);
        }

        return new Thing(strokes, box);
    }
}
