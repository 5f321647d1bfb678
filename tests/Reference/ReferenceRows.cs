using System.Text.RegularExpressions;

namespace Duskwright.Reference;

/// <summary>Rows of a published table under tests/Reference; lines that begin with # tell its source.</summary>
internal static partial class ReferenceRows
{
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Of(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Reference", file)).Where(l => !l.StartsWith('#')).ToList();
        var headings = Fields(lines[0]);
        return [.. lines.Skip(1).Select(line => (IReadOnlyDictionary<string, string>)headings
            .Zip(Fields(line))
            .ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal))];
    }

    internal static double Number(this IReadOnlyDictionary<string, string> row, string column) =>
        double.Parse(row[column], System.Globalization.CultureInfo.InvariantCulture);

    private static IEnumerable<string> Fields(string line) =>
        Field().Matches(line).Select(m => m.Groups["quoted"].Success ? m.Groups["quoted"].Value.Replace("\"\"", "\"", StringComparison.Ordinal) : m.Groups["plain"].Value);

    [GeneratedRegex("""(^|,)("(?<quoted>([^"]|"")*)"|(?<plain>[^,]*))""", RegexOptions.ExplicitCapture)]
    private static partial Regex Field();
}
