using System.Data;
using System.Globalization;
using MiniExcelLibs;

namespace Duskwright.Book.Lists;

/// <summary>All lists as one workbook (ECMA-376), a sheet for each.</summary>
public static class XlsxFile
{
    /// <summary>The workbook's usual file name.</summary>
    public const string FileName = "lists.xlsx";

    /// <summary>Writes the workbook.</summary>
    /// <param name="lists">The lists, no two with one title.</param>
    /// <param name="stream">Where to write.</param>
    public static void Write(IEnumerable<TownList> lists, Stream stream) =>
        stream.SaveAs(lists.ToDictionary(l => l.Title, l => (object)Table(l), StringComparer.Ordinal));

    // Bare numbers stay numbers, so that a sheet can be summed; all else is text. A data table keeps its headings when it has no rows.
    private static DataTable Table(TownList list)
    {
        var table = new DataTable { Locale = CultureInfo.InvariantCulture };
        foreach (var heading in list.Headings)
        {
            table.Columns.Add(heading, typeof(object));
        }

        foreach (var row in list.Rows)
        {
            table.Rows.Add([.. row.Select(c => c.Number is { } number ? number : (object)c.Text)]);
        }

        return table;
    }
}
