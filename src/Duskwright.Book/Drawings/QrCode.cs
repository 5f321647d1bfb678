using QRCoder;

namespace Duskwright.Book.Drawings;

/// <summary>A QR code (ISO/IEC 18004, error correction M) as a drawing.</summary>
public static class QrCode
{
    /// <summary>The path of its dark modules.</summary>
    /// <param name="text">What it says, an address.</param>
    /// <param name="x">Left of the code, its quiet zone of four modules included.</param>
    /// <param name="y">Top.</param>
    /// <param name="size">Width and height, quiet zone included.</param>
    /// <returns>Path data.</returns>
    public static string Path(string text, double x, double y, double size)
    {
        using var made = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var rows = made.ModuleMatrix;
        var module = size / rows.Count;
        var path = new System.Text.StringBuilder();
        for (var row = 0; row < rows.Count; row++)
        {
            for (var column = 0; column < rows.Count; column++)
            {
                // Neighbours in a row are one bar, so that no hairline shows between them.
                var first = column;
                while (column < rows.Count && rows[row][column])
                {
                    column++;
                }

                if (column > first)
                {
                    path.Append(Trace.Rectangle(x + (first * module), y + (row * module), (column - first) * module, module));
                }
            }
        }

        return path.ToString();
    }

    /// <summary>The code on its own, for a screen.</summary>
    /// <param name="text">What it says.</param>
    /// <param name="words">What it is, for whoever cannot see it.</param>
    /// <returns>A drawing 100 units wide.</returns>
    public static Drawing Of(string text, string words) =>
        new(words, 0, 0, 100, 100, 1, [new Part([new Stroke(Path(text, 0, 0, 100), Inks.Solid)])]);
}
