using System.Globalization;
using SkiaSharp;

namespace Duskwright.Book.Tiles;

/// <summary>How a board is cut into pages that lie over one another by a strip; millimetres, x to the right, y from the back edge to the front.</summary>
/// <param name="BoardWidth">Width of the board.</param>
/// <param name="BoardDepth">Depth of the board.</param>
/// <param name="TileWidth">Width of what a page shows, its strips included.</param>
/// <param name="TileHeight">Height of what a page shows.</param>
internal sealed record TileGrid(double BoardWidth, double BoardDepth, double TileWidth, double TileHeight)
{
    /// <summary>Width of the strip that two neighbours share; room for a glue stick.</summary>
    internal const double Overlap = 10;

    internal int Columns => Count(BoardWidth, TileWidth);

    internal int Rows => Count(BoardDepth, TileHeight);

    /// <summary>What a tile shows; the board lies in the middle of all tiles together.</summary>
    internal SKRect Tile(int column, int row) =>
        SKRect.Create((float)Start(column, Columns, BoardWidth, TileWidth), (float)Start(row, Rows, BoardDepth, TileHeight), (float)TileWidth, (float)TileHeight);

    /// <summary>What is a tile's own: up to the middle of each strip. Every point of the board is some tile's own.</summary>
    internal SKRect Own(int column, int row) => SKRect.Inflate(Tile(column, row), (float)(-Overlap / 2), (float)(-Overlap / 2));

    /// <summary>A letter for the row, a number for the column; after Z comes AA.</summary>
    internal static string Name(int column, int row) =>
        $"{(row >= 26 ? ((char)('A' + (row / 26) - 1)).ToString() : "")}{(char)('A' + (row % 26))}{(column + 1).ToString(CultureInfo.InvariantCulture)}";

    private static int Count(double board, double tile) => Math.Max(1, (int)Math.Ceiling(board / (tile - Overlap)));

    private static double Start(int index, int count, double board, double tile)
    {
        var all = (count * (tile - Overlap)) + Overlap;
        return ((board - all) / 2) + (index * (tile - Overlap));
    }
}
