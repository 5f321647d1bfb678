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
        routes.MapGet("/take/{paper}.pdf", (string paper, string? only, string? since, OpenTown open, IServiceProvider services, CancellationToken cancel) =>
            Enum.TryParse<PaperSize>(paper, ignoreCase: true, out var size) && !char.IsAsciiDigit(paper[0]) && BookToday.Choice(open.Study, only) is { } choice
                ? Printed(open, BookToday.Of(open.Town, size) with { Choice = choice, Since = BookToday.Since(open, since), Address = services.GetService<PhoneDoor>()?.Address }, cancel)
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

    private static IResult Printed(OpenTown open, BookOptions options, CancellationToken cancel)
    {
        using var stream = new MemoryStream();
        return BenchBook.WritePdf(open.Study, options, stream, null, cancel) > 0
            ? Results.File(stream.ToArray(), "application/pdf", $"{open.FileStem}-{(options.Choice == BookChoice.Whole ? "bench-book" : options.Choice.Key ?? "labels")}.pdf")
            : Results.Text("No sheet has changed since; there is nothing to print.");
    }
}
