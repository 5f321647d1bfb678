namespace Duskwright.Plan.Tests;

/// <summary>Rows of a published table under tests/Reference; lines that begin with # tell its source.</summary>
internal static class ReferenceRows
{
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Of(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Reference", file)).Where(l => !l.StartsWith('#')).ToList();
        var headings = lines[0].Split(',');
        return [.. lines.Skip(1).Select(line => (IReadOnlyDictionary<string, string>)headings
            .Zip(line.Split(','))
            .ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal))];
    }

    internal static double Number(this IReadOnlyDictionary<string, string> row, string column) =>
        double.Parse(row[column], System.Globalization.CultureInfo.InvariantCulture);
}
