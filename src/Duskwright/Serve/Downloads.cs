using System.Globalization;
using System.Text;
using Duskwright.Book.Sheets;
using Duskwright.Plan.Format;
using Duskwright.Study.Figures;
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
        routes.MapGet("/take/{paper}.pdf", (string paper, OpenTown open) => Enum.TryParse<PaperSize>(paper, ignoreCase: true, out var size)
            ? Results.File(Pdf(open, size), "application/pdf", $"{open.FileStem}-bench-book.pdf")
            : Results.NotFound());
        routes.MapGet("/take/{list}.csv", (string list, OpenTown open) => Table(list, open) is { } rows
            ? Results.File(Encoding.UTF8.GetBytes(Csv(rows)), "text/csv", $"{open.FileStem}-{list}.csv")
            : Results.NotFound());
    }

    private static byte[] Pdf(OpenTown open, PaperSize paper)
    {
        using var stream = new MemoryStream();
        BenchBook.WritePdf(open.Study, new BookOptions(paper, DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime)), stream);
        return stream.ToArray();
    }

    private static IEnumerable<string[]>? Table(string list, OpenTown open) => list switch
    {
        "cut" => open.Study.CutList.Select(r => new[] { r.Label, r.For, r.Wire, Number(r.Conductors), Number(Math.Ceiling(r.Length.Value * 1000)), r.Laid ? "laid" : "" })
            .Prepend(["label", "for", "wire", "conductors", "length mm", "laid"]),
        "load" => open.Study.LoadList.Select(r => new[] { r.Code, r.Building, Number(r.Lamps), r.Kinds, r.SwitchGroup ?? "", r.Supply ?? "", Milliamperes(r.Current) })
            .Prepend(["code", "building", "lamps", "kinds", "switch", "pack", "current mA"]),
        "switch" => open.Study.SwitchList.Select(r => new[] { r.Id, r.Name ?? "", r.Supply ?? "", Number(r.Lamps), Milliamperes(r.Current), string.Join(", ", r.Buildings) })
            .Prepend(["switch", "name", "pack", "lamps", "current mA", "buildings"]),
        "parts" => open.Study.PartsList.Select(r => new[] { r.Part, r.Use, Number(r.Needed), Number(r.Spares), Number(r.Packs), r.PackWords, Number(r.Cost?.Value) })
            .Prepend(["part", "use", "needed", "spares", "packs to buy", "pack", "cost"]),
        _ => null,
    };

    private static string Csv(IEnumerable<string[]> rows) => string.Concat(rows.Select(r => string.Join(',', r.Select(Quoted)) + "\r\n"));

    // A cell that begins like a formula would be run by a spreadsheet; the apostrophe keeps it text.
    private static string Quoted(string cell)
    {
        var safe = cell.Length > 0 && "=+-@".Contains(cell[0], StringComparison.Ordinal) ? $"'{cell}" : cell;
        return safe.IndexOfAny([',', '"', '\n', '\r']) < 0 ? safe : $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }

    private static string Milliamperes(Figure? current) => Number(current?.Value * 1000);

    private static string Number(double? value) => value?.ToString("0.##", CultureInfo.InvariantCulture) ?? "";
}
