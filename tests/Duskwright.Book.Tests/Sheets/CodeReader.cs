using System.Globalization;
using System.Text;

namespace Duskwright.Book.Tests.Sheets;

/// <summary>Reads a QR code of versions 2 to 6, level M, whose modules are whole: what a camera makes of it, error correction apart.</summary>
/// <remarks>
/// Source: ISO/IEC 18004:2015, from memory: format information (7.9, mask 101010000010010), data masks (7.8.2, table 10), placement (7.7.3),
/// blocks (table 9, level M: 28, 44, 64, 86, 108 data codewords in 1, 1, 2, 2, 4 blocks), modes for figures, capitals and bytes (7.4.3 to 7.4.5).
/// </remarks>
internal static class CodeReader
{
    private const int FormatMask = 0b101010000010010;
    private const int LevelM = 0b00;
    private const int Digits = 0b0001;
    private const int Capitals = 0b0010;
    private const int Bytes = 0b0100;
    private const string Alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";
    private static readonly Dictionary<int, (int Data, int Blocks)> OfVersion = new() { [2] = (28, 1), [3] = (44, 1), [4] = (64, 2), [5] = (86, 2), [6] = (108, 4) };

    /// <summary>Reads the words of a code.</summary>
    /// <param name="dark">Modules by row and column, quiet zone left out.</param>
    /// <returns>What it says.</returns>
    internal static string Read(bool[,] dark)
    {
        var size = dark.GetLength(0);
        var (data, blocks) = OfVersion[(size - 17) / 4];
        var format = Format(dark) ^ FormatMask;
        Assert.Equal(LevelM, format >> 13);
        var bits = Bits(dark, size, (format >> 10) & 0b111).Take(8 * data).ToList();
        var woven = Enumerable.Range(0, data).Select(i => Number(bits, 8 * i, 8)).ToList();
        var bytes = Enumerable.Range(0, blocks).SelectMany(b => woven.Where((_, i) => i % blocks == b)).SelectMany(w => Enumerable.Range(0, 8).Select(i => ((w >> (7 - i)) & 1) == 1)).ToList();
        return Words(bytes);
    }

    private static string Words(List<bool> bits)
    {
        var (words, at) = (new StringBuilder(), 0);
        int Next(int count)
        {
            var number = Number(bits, at, count);
            at += count;
            return number;
        }

        while (at + 4 <= bits.Count && Next(4) is var mode && mode != 0)
        {
            switch (mode)
            {
                case Digits:
                    for (var left = Next(10); left > 0; left -= 3)
                    {
                        words.Append(Next((3 * Math.Min(left, 3)) + 1).ToString(CultureInfo.InvariantCulture).PadLeft(Math.Min(left, 3), '0'));
                    }

                    break;
                case Capitals:
                    for (var left = Next(9); left > 0; left -= 2)
                    {
                        var pair = Next(left > 1 ? 11 : 6);
                        words.Append(left > 1 ? $"{Alphabet[pair / 45]}{Alphabet[pair % 45]}" : $"{Alphabet[pair]}");
                    }

                    break;
                case Bytes:
                    for (var left = Next(8); left > 0; left--)
                    {
                        words.Append((char)Next(8));
                    }

                    break;
                default:
                    Assert.Fail($"Mode {mode} is none that an address needs.");
                    break;
            }
        }

        return words.ToString();
    }

    private static int Format(bool[,] dark)
    {
        var places = new[] { 0, 1, 2, 3, 4, 5, 7, 8 }.Select(c => (Row: 8, Column: c)).Concat(new[] { 7, 5, 4, 3, 2, 1, 0 }.Select(r => (Row: r, Column: 8)));
        return places.Aggregate(0, (bits, p) => (bits << 1) | (dark[p.Row, p.Column] ? 1 : 0));
    }

    // Two columns at a time from the right, up and down in turn, around what is no data.
    private static IEnumerable<bool> Bits(bool[,] dark, int size, int mask)
    {
        var up = true;
        for (var right = size - 1; right > 0; right -= 2, up = !up)
        {
            if (right == 6)
            {
                right--;
            }

            for (var step = 0; step < size; step++)
            {
                var row = up ? size - 1 - step : step;
                foreach (var column in (int[])[right, right - 1])
                {
                    if (!IsFixed(row, column, size))
                    {
                        yield return dark[row, column] != Masked(mask, row, column);
                    }
                }
            }
        }
    }

    private static bool IsFixed(int row, int column, int size) =>
        row == 6 || column == 6
        || (row < 9 && (column < 9 || column >= size - 8)) || (row >= size - 8 && column < 9)
        || (Math.Abs(row - (size - 7)) <= 2 && Math.Abs(column - (size - 7)) <= 2);

    private static bool Masked(int mask, int i, int j) => mask switch
    {
        0 => (i + j) % 2,
        1 => i % 2,
        2 => j % 3,
        3 => (i + j) % 3,
        4 => ((i / 2) + (j / 3)) % 2,
        5 => (i * j % 2) + (i * j % 3),
        6 => ((i * j % 2) + (i * j % 3)) % 2,
        _ => (((i + j) % 2) + (i * j % 3)) % 2,
    }
    == 0;

    private static int Number(List<bool> bits, int from, int count) => bits.Skip(from).Take(count).Aggregate(0, (n, b) => (n << 1) | (b ? 1 : 0));
}
