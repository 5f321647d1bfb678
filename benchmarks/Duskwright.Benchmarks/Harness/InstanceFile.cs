using System.Globalization;

namespace Duskwright.Benchmarks.Harness;

/// <summary>Reads published problems: numbers between white space, and tables with comment lines.</summary>
internal static class InstanceFile
{
    internal static IEnumerator<double> Numbers(string path) => File.ReadAllText(path)
        .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
        .Where(w => double.TryParse(w, CultureInfo.InvariantCulture, out _))
        .Select(w => double.Parse(w, CultureInfo.InvariantCulture))
        .GetEnumerator();

    internal static double Next(this IEnumerator<double> numbers) => numbers.MoveNext() ? numbers.Current : throw new InvalidDataException("The file ends too soon.");

    internal static double[] Next(this IEnumerator<double> numbers, int count) => [.. Enumerable.Range(0, count).Select(_ => numbers.Next())];

    /// <summary>Rows of a table, by the names of its header, comment lines left out; no field of ours holds a comma before the last used column.</summary>
    internal static IEnumerable<Func<string, string>> Rows(string path)
    {
        var lines = File.ReadLines(path).Where(l => l.Length > 0 && l[0] != '#').ToList();
        var names = lines[0].Split(',');
        return lines.Skip(1).Select(line =>
        {
            var fields = line.Split(',');
            return (Func<string, string>)(name => fields[Array.IndexOf(names, name)]);
        });
    }

    internal static double Number(this string text) => double.Parse(text, CultureInfo.InvariantCulture);

    internal static int Whole(this string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
