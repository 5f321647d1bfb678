using Duskwright.Book.Sheets;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Study;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Duskwright.Book.Tests;

/// <summary>The harbour town, studied once and printed and read once on each paper for all tests: each takes seconds.</summary>
internal static class PrintedSaltmarrow
{
    internal static DateOnly Date { get; } = new(2026, 11, 25);

    internal static Town Town { get; } = Example("saltmarrow.json");

    internal static TownStudy Study { get; } = TownStudy.Of(Town);

    private static readonly Dictionary<PaperSize, Lazy<byte[]>> Printed = Enum.GetValues<PaperSize>().ToDictionary(p => p, p => new Lazy<byte[]>(() => Bytes(Study, new BookOptions(p, Date))));
    private static readonly Dictionary<PaperSize, Lazy<IReadOnlyList<ReadPage>>> Read = Enum.GetValues<PaperSize>().ToDictionary(p => p, p => new Lazy<IReadOnlyList<ReadPage>>(() => ReadPage.Of(Printed[p].Value)));

    /// <summary>The pages of the whole book, parsed.</summary>
    internal static IReadOnlyList<ReadPage> Pages(PaperSize paper = PaperSize.A4) => Read[paper].Value;

    /// <summary>The file of the whole book.</summary>
    internal static byte[] File(PaperSize paper = PaperSize.A4) => Printed[paper].Value;

    /// <summary>Results of an edited town, kept answers taken over.</summary>
    internal static TownStudy Edited(Town town) => Study.After(town);

    internal static Town Example(string name) => TownJson.Read(System.IO.File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", name))).Town!;

    internal static byte[] Bytes(TownStudy study, BookOptions options)
    {
        using var stream = new MemoryStream();
        BenchBook.WritePdf(study, options, stream);
        return stream.ToArray();
    }
}

/// <summary>A page read back by a library that did not write it.</summary>
/// <param name="Page">What it draws.</param>
internal sealed record ReadPage(Page Page)
{
    private readonly Lazy<IReadOnlyList<Word>> _words = new(() => [.. Page.GetWords()]);

    /// <summary>Its words in reading order.</summary>
    internal IReadOnlyList<Word> Words => _words.Value;

    /// <summary>All its words, thin spaces and spaces alike.</summary>
    internal string Text => string.Join(' ', Words.Select(w => w.Text)).Replace('\u2009', ' ');

    internal static IReadOnlyList<ReadPage> Of(byte[] file)
    {
        using var book = PdfDocument.Open(file);
        return [.. book.GetPages().Select(p => new ReadPage(p))];
    }

    internal static IReadOnlyList<ReadPage> Of(TownStudy study, BookOptions options) => Of(PrintedSaltmarrow.Bytes(study, options));
}
