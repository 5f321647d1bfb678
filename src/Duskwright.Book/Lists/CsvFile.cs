using System.Text;

namespace Duskwright.Book.Lists;

/// <summary>A list as comma-separated values (RFC 4180), in UTF-8 with the mark by which spreadsheets know it.</summary>
public static class CsvFile
{
    /// <summary>Writes a list.</summary>
    /// <param name="list">The list.</param>
    /// <returns>The file's bytes; the same list gives the same bytes.</returns>
    public static byte[] Of(TownList list)
    {
        var lines = list.Rows.Select(r => r.Select(c => c.Text)).Prepend(list.Headings).Select(r => string.Join(',', r.Select(Quoted)) + "\r\n");
        return [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(string.Concat(lines))];
    }

    // A cell that begins like a formula would be run by a spreadsheet; the apostrophe keeps it text.
    private static string Quoted(string cell)
    {
        var safe = cell.Length > 0 && "=+-@".Contains(cell[0], StringComparison.Ordinal) ? $"'{cell}" : cell;
        return safe.IndexOfAny([',', '"', '\n', '\r']) < 0 ? safe : $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
