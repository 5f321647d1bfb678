using System.Text;
using Duskwright.Book.Lists;
using Duskwright.Book.Sheets;
using Duskwright.Plan.Format;
using Duskwright.Towns;

namespace Duskwright.Serve;

/// <summary>Files that the maker takes away: the town and its lists.</summary>
public static class Downloads
{
    /// <summary>Maps the download addresses.</summary>
    /// <param name="routes">Where they are mapped.</param>
    public static void MapDownloads(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/take/town.json", (OpenTown open) => Results.File(Encoding.UTF8.GetBytes(TownJson.Write(open.Town)), "application/json", $"{open.FileStem}.json"));
        routes.MapGet("/take/{paper}.pdf", (string paper, OpenTown open) => Enum.TryParse<PaperSize>(paper, ignoreCase: true, out var size) && !char.IsAsciiDigit(paper[0])
            ? Results.File(Pdf(open, size), "application/pdf", $"{open.FileStem}-bench-book.pdf")
            : Results.NotFound());
        routes.MapGet("/take/lists.xlsx", (OpenTown open) => Results.File(Workbook(open), "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", $"{open.FileStem}-{XlsxFile.FileName}"));
        routes.MapGet("/take/{list}.csv", (string list, OpenTown open) => TownLists.Of(open.Study).FirstOrDefault(l => l.Id == list) is { } found
            ? Results.File(CsvFile.Of(found), "text/csv", $"{open.FileStem}-{found.FileName}")
            : Results.NotFound());
    }

    private static byte[] Workbook(OpenTown open)
    {
        using var stream = new MemoryStream();
        XlsxFile.Write(TownLists.Of(open.Study), stream);
        return stream.ToArray();
    }

    private static byte[] Pdf(OpenTown open, PaperSize paper)
    {
        using var stream = new MemoryStream();
        BenchBook.WritePdf(open.Study, BookToday.Of(open.Town, paper), stream);
        return stream.ToArray();
    }
}
