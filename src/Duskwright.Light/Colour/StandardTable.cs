using System.Collections.Immutable;
using System.Globalization;

namespace Duskwright.Light.Colour;

/// <summary>A table of an international standard, 380 to 780 nm in steps of 5 nm; the file's first lines tell its source.</summary>
internal static class StandardTable
{
    /// <summary>One column of a table.</summary>
    internal static ImmutableArray<double> Column(string table, string column)
    {
        using var reader = new StreamReader(typeof(StandardTable).Assembly.GetManifestResourceStream(table)!);
        var lines = reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(l => l[0] != '#').Select(l => l.Trim().Split(',')).ToList();
        var at = Array.IndexOf(lines[0], column);
        return [.. lines.Skip(1).Select(fields => double.Parse(fields[at], CultureInfo.InvariantCulture))];
    }
}
