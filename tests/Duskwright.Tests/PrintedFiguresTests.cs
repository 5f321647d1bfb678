using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Duskwright.Tests;

/// <summary>The printed book, read back from its PDF, says what <c>study --json</c> says of the same town.</summary>
public sealed partial class PrintedFiguresTests(PrintedFiguresTests.Saltmarrow book) : IClassFixture<PrintedFiguresTests.Saltmarrow>
{
    [Fact]
    public void Each_pack_is_printed_with_its_current_volts_and_hours()
    {
        var missing = from pack in Rows(book.Json.GetProperty("packs"))
                      let row = Line("Pack list", pack.GetProperty("id").GetString()!, pack.GetProperty("name").GetString()!.Split(' ')[0])
                      from name in (string[])["load", "volts", "hours_to_dim", "hours_to_spoiled"]
                      let figure = pack.GetProperty(name)
                      where !Says(row, figure) || (name is "load" or "hours_to_dim" && !SaysRange(row, figure))
                      select $"{name} is not in: {row}";
        Assert.Empty(missing);
    }

    [Fact]
    public void Each_switch_and_each_load_is_printed_with_its_current()
    {
        Assert.All(Rows(book.Json.GetProperty("switch_list")), s => Assert.True(Says(Line("Switch list", s.GetProperty("id").GetString()!), s.GetProperty("current"))));
        Assert.All(Rows(book.Json.GetProperty("load_list")), l =>
        {
            var row = Line("Load list", l.GetProperty("code").GetString()!, l.GetProperty("building").GetString()!.Split(' ')[0]);
            Assert.True(Says(row, l.GetProperty("current")) && SaysRange(row, l.GetProperty("current")), row);
        });
    }

    // A lead is cut in whole millimetres, rounded up.
    [Fact]
    public void Each_lead_is_printed_with_its_length() => Assert.All(Rows(book.Json.GetProperty("cut_list")), lead =>
    {
        var millimetres = Math.Ceiling((lead.GetProperty("length").GetProperty("value").GetDouble() * 1000) - 1e-9).ToString("0", CultureInfo.InvariantCulture);
        var label = lead.GetProperty("label").GetString()!;
        Assert.Contains(book.Lines("Cut list"), line => line.StartsWith($"{label} ", StringComparison.Ordinal) && line.Split(' ').Contains(millimetres));
    });

    [Fact]
    public void Each_part_is_printed_with_its_number_and_cost_and_all_with_their_sum()
    {
        Assert.All(Rows(book.Json.GetProperty("parts_list")), part =>
        {
            var count = $" {part.GetProperty("needed")} {part.GetProperty("spares")} {part.GetProperty("packs")} ";
            var name = part.GetProperty("part").GetString()!.Split(' ', '\u2009')[0];
            Assert.Contains(book.Lines("Parts list"), line =>
                line.Contains(name, StringComparison.Ordinal) && line.Contains(count, StringComparison.Ordinal)
                && (!part.TryGetProperty("cost", out var cost) || Near(double.Parse(line.Split(' ')[^1], CultureInfo.InvariantCulture), cost.GetProperty("value").GetDouble())));
        });
        var sum = SumLine().Match(string.Join(' ', book.Lines("Parts list"))).Groups[1].Value;
        Assert.True(Near(double.Parse(sum, CultureInfo.InvariantCulture), book.Json.GetProperty("parts_cost").GetProperty("value").GetDouble()), sum);
    }

    [Fact]
    public void Each_house_is_printed_with_its_currents_resistors_tests_and_length() =>
        Assert.Empty(Rows(book.Json.GetProperty("buildings")).Where(b => b.GetProperty("lamps").GetArrayLength() > 0).SelectMany(Disagreements));

    // The bank's sheet has the scale of a plot; the record has what the maker read.
    private static readonly string[] Apart = ["The bank", "As it was built", "What was done and read"];

    [Fact]
    public void No_figure_of_the_book_is_unknown_to_the_study()
    {
        var known = Numbers(book.Json).Concat(Words(book.Json).SelectMany(Printed).Select(p => (p.Value, p.Unit))).ToLookup(k => k.Unit, k => k.Value);
        var unknown = from sheet in book.Sheets
                      where !Apart.Any(a => sheet.StartsWith(a, StringComparison.Ordinal))
                      from p in Printed(Names().Replace(sheet, ""))
                      where p.Unit is "A" or "V" or "h" or "°C" or "W" or "Ω" && !known[p.Unit].Any(k => Near(p.Value * p.Factor, k * p.Factor))
                      select $"{p.Value * p.Factor} ({p.Unit}) in: {sheet[..40]}";
        Assert.Empty(unknown);
    }

    private IEnumerable<string> Disagreements(JsonElement house)
    {
        var name = house.GetProperty("name").GetString()!;
        var sheet = Names().Replace(book.Sheet(name, house.GetProperty("code").GetString()!), "");
        var figures = Rows(house.GetProperty("lamps")).SelectMany(l => new[] { l.GetProperty("current"), l.GetProperty("resistor") })
            .Concat(Rows(house.GetProperty("tests")).Where(t => t.TryGetProperty("reading", out _)).Select(t => t.GetProperty("reading")))
            .Append(house.GetProperty("current")).Append(house.GetProperty("pair_length"));
        foreach (var figure in figures.Where(f => f.GetProperty("value").GetDouble() > 0 && !Says(sheet, f)))
        {
            yield return $"{name}: its sheet does not say {figure.GetProperty("name")}, {figure.GetProperty("value")} {figure.GetProperty("unit")}";
        }

        // And nothing else: no current, voltage or resistance on its sheet that is not a result of its own.
        var own = Numbers(house).Concat(Words(house).SelectMany(Printed).Select(p => (p.Value, p.Unit))).ToList();
        foreach (var p in Printed(sheet).Where(p => p.Unit is "A" or "V" or "Ω" && !own.Any(n => n.Unit == p.Unit && Near(p.Value * p.Factor, n.Value * p.Factor))))
        {
            yield return $"{name}: its sheet says {p.Value * p.Factor} ({p.Unit}), which is no result of its own";
        }
    }

    private string Line(string list, params string[] begins) =>
        Assert.Single(book.Lines(list), line => line.StartsWith(string.Join(' ', begins) + " ", StringComparison.Ordinal));

    private static List<JsonElement> Rows(JsonElement array) => [.. array.EnumerateArray()];

    private static bool Says(string text, JsonElement figure) => Says(text, figure.GetProperty("value").GetDouble(), figure.GetProperty("unit").GetString()!);

    private static bool SaysRange(string text, JsonElement figure) => ((string[])["low", "high"]).All(end => Says(text, figure.GetProperty(end).GetDouble(), figure.GetProperty("unit").GetString()!));

    private static bool Says(string text, double value, string unit) => Printed(text).Any(p => p.Unit == unit && Near(p.Value * p.Factor, value * p.Factor));

    // Printed are three digits, and no more than two after the point.
    private static bool Near(double printed, double value) =>
        Math.Abs(printed - value) <= 1e-9 + Math.Max(0.005, printed == 0 ? 0 : 0.5 * Math.Pow(10, Math.Min(0, Math.Floor(Math.Log10(Math.Abs(printed))) - 2)));

    // The factor leads back to the number as it is printed, so that its own digits judge.
    private static IEnumerable<(double Value, string Unit, double Factor)> Printed(string text)
    {
        foreach (Match match in Quantity().Matches(text))
        {
            var unit = match.Groups[3].Value;
            var (factor, plain) = unit switch { "mA" => (1e3, "A"), "mV" => (1e3, "V"), "mm" => (1e3, "m"), "mW" => (1e3, "W"), "kΩ" => (1e-3, "Ω"), _ => (1.0, unit) };
            foreach (var digits in match.Groups.Values.Skip(1).Take(2).Where(g => g.Success))
            {
                yield return (double.Parse(digits.Value, CultureInfo.InvariantCulture) / factor, plain, factor);
            }
        }
    }

    private static IEnumerable<(double Value, string Unit)> Numbers(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Numbers),
        JsonValueKind.Object when element.TryGetProperty("unit", out var unit) && element.TryGetProperty("value", out _) =>
            element.EnumerateObject().Where(p => p.Name is "value" or "low" or "high").Select(p => (p.Value.GetDouble(), unit.GetString()!))
                .Concat(element.TryGetProperty("inputs", out var inputs) ? Numbers(inputs) : []),
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => Numbers(p.Value)),
        _ => [],
    };

    private static IEnumerable<string> Words(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Words),
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => Words(p.Value)),
        JsonValueKind.String => [element.GetString()!],
        _ => [],
    };

    [GeneratedRegex(@"(?<![\w.])(\d+(?:\.\d+)?)(?:–(\d+(?:\.\d+)?))?\s(mA|A|mV|V|h|kΩ|Ω|mm|m|mW|W|°C)(?![\w-])")]
    private static partial Regex Quantity();

    // Parts are called by their rating, and card browns at a temperature that is no result of the town.
    [GeneratedRegex(@"fuse, \d+ m?A|for \d+ V|about 120 °C")]
    private static partial Regex Names();

    [GeneratedRegex(@"In all (\S+), tools apart")]
    private static partial Regex SumLine();

    /// <summary>Saltmarrow's study and book, made once by the real program.</summary>
    public sealed class Saltmarrow : IAsyncLifetime
    {
        private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("duskwright-");
        private List<(string Heading, List<string> Lines)> _pages = [];

        internal JsonElement Json { get; private set; }

        internal IEnumerable<string> Sheets => _pages.Select(p => string.Join(' ', p.Lines));

        public async ValueTask InitializeAsync()
        {
            var town = Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json");
            Json = JsonDocument.Parse((await CommandLineTests.Run("study", town, "--json")).Text).RootElement;
            Assert.Equal(0, (await CommandLineTests.Run("book", town, "--out", _folder.FullName)).Code);
            using var pdf = PdfDocument.Open(await File.ReadAllBytesAsync(Path.Combine(_folder.FullName, "bench-book.pdf")));
            _pages = [.. pdf.GetPages().Select(p => Lines(p)).Select(l => (l[0], l))];
        }

        public ValueTask DisposeAsync()
        {
            _folder.Delete(recursive: true);
            return ValueTask.CompletedTask;
        }

        internal IEnumerable<string> Lines(string heading) => _pages.Where(p => p.Heading == heading).SelectMany(p => p.Lines);

        // From the page that opens with the house's label on to the last of the same heading.
        internal string Sheet(string house, string code)
        {
            var first = _pages.FindIndex(p => p.Heading == house && p.Lines.Any(l => l.Contains($"label {code} ", StringComparison.Ordinal)));
            return string.Join(' ', _pages.Skip(first).TakeWhile((p, i) => i == 0 || (p.Heading == house && !p.Lines.Any(l => l.StartsWith("House ", StringComparison.Ordinal)))).SelectMany(p => p.Lines));
        }

        // Words on one baseline, from the left; the thin space before a unit reads as a space.
        private static List<string> Lines(Page page) =>
            [.. page.GetWords().GroupBy(w => Math.Round(w.Letters[0].StartBaseLine.Y, 1)).OrderByDescending(g => g.Key)
                .Select(g => string.Join(' ', g.OrderBy(w => w.BoundingBox.Left).Select(w => w.Text.Replace('\u2009', ' '))))];
    }
}
