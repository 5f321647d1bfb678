using System.Globalization;
using System.IO.Compression;
using System.Xml.Linq;

namespace Duskwright.Book.Tests.Lists;

/// <summary>A workbook read as its standard says, without the library that wrote it.</summary>
/// <remarks>Source: ECMA-376 part 1, 18.2.19 (sheets), 18.3.1.4 (cells), 18.4.8 (shared strings).</remarks>
internal sealed class Workbook : IDisposable
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static readonly XNamespace Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private readonly ZipArchive _zip;

    internal Workbook(byte[] bytes) => _zip = new ZipArchive(new MemoryStream(bytes));

    internal IReadOnlyList<string> Sheets => [.. Part("xl/workbook.xml").Descendants(Main + "sheet").Select(s => s.Attribute("name")!.Value)];

    public void Dispose() => _zip.Dispose();

    /// <summary>The cells of a sheet row by row: text, and the number where the cell is one.</summary>
    internal IReadOnlyList<IReadOnlyList<(string Text, double? Number)>> Rows(string sheet)
    {
        var id = Part("xl/workbook.xml").Descendants(Main + "sheet").Single(s => s.Attribute("name")!.Value == sheet).Attribute(Relations + "id")!.Value;
        var target = Part("xl/_rels/workbook.xml.rels").Root!.Elements().Single(r => r.Attribute("Id")!.Value == id).Attribute("Target")!.Value.TrimStart('/');
        var path = target.StartsWith("xl/", StringComparison.Ordinal) ? target : $"xl/{target}";
        var shared = _zip.GetEntry("xl/sharedStrings.xml") is null ? [] : Part("xl/sharedStrings.xml").Root!.Elements(Main + "si").Select(si => si.Value).ToList();
        return [.. Part(path).Descendants(Main + "row").Select(row => (IReadOnlyList<(string, double?)>)[.. row.Elements(Main + "c").Select(c => Cell(c, shared))])];
    }

    private static (string Text, double? Number) Cell(XElement cell, List<string> shared)
    {
        var value = cell.Element(Main + "v")?.Value ?? cell.Element(Main + "is")?.Value ?? "";
        return cell.Attribute("t")?.Value switch
        {
            "s" => (shared[int.Parse(value, CultureInfo.InvariantCulture)], null),
            null or "n" when value.Length > 0 => (value, double.Parse(value, CultureInfo.InvariantCulture)),
            _ => (value, null),
        };
    }

    private XDocument Part(string name)
    {
        using var stream = _zip.GetEntry(name)!.Open();
        return XDocument.Load(stream);
    }
}
