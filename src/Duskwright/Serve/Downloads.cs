using System.Text;
using Duskwright.Book.Lists;
using Duskwright.Book.Sheets;
using Duskwright.Plan.Format;
using Duskwright.Study;
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
        routes.MapGet("/take/printed/{name}.pdf", (string name, OpenTown open, PrintRoom room) => room.Find(name) is { } path
            ? Results.File(File.Open(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete), "application/pdf", $"{open.FileStem}-bench-book.pdf")
            : Results.NotFound());
        routes.MapPost("/take/labels.pdf", LabelsAsync);
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

    // A part of the book goes straight to whoever asked; the file goes when it is sent.
    private static IResult Printed(OpenTown open, BookOptions options, CancellationToken cancel)
    {
        var name = $"{open.FileStem}-{(options.Choice == BookChoice.Whole ? "bench-book" : options.Choice.Key ?? "labels")}.pdf";
        return Sent(open.Study, options, name, "No sheet has changed since; there is nothing to print.", cancel);
    }

    private static IResult Sent(TownStudy study, BookOptions options, string name, string ifNone, CancellationToken cancel)
    {
        var file = new FileStream(Path.GetTempFileName(), FileMode.Create, FileAccess.ReadWrite, FileShare.None, 1 << 16, FileOptions.DeleteOnClose);
        var pages = 0;
        try
        {
            pages = BenchBook.WritePdf(study, options, file, null, cancel);
            file.Position = 0;
            return pages > 0 ? Results.File(file, "application/pdf", name) : Results.Text(ifNone);
        }
        finally
        {
            if (pages == 0)
            {
                file.Dispose();
            }
        }
    }

    // Typed lines become labels without becoming the maker's town.
    private static async Task<IResult> LabelsAsync(HttpRequest request, OpenTown open, CancellationToken cancel)
    {
        var form = await request.ReadFormAsync(cancel);
        return TypedPlan.Of(form["lines"].ToString(), open.Lengths) is { Study: { } study }
            ? Sent(study, BookToday.Of(study.Town, form["paper"] == "letter" ? PaperSize.Letter : PaperSize.A4) with { Choice = BookChoice.Labels }, "labels.pdf", "No house has an LED; there is nothing to print.", cancel)
            : Results.Text("The lines cannot be read; the start page says what is amiss.", statusCode: StatusCodes.Status422UnprocessableEntity);
    }
}
