using System.Globalization;

namespace Duskwright.Light.Tests;

/// <summary>Inputs of a row of a published table, written key=value and parted by semicolons in its column "inputs".</summary>
internal static class RowInputs
{
    internal static double Input(this IReadOnlyDictionary<string, string> row, string key) => double.Parse(row.InputText(key), CultureInfo.InvariantCulture);

    internal static string InputText(this IReadOnlyDictionary<string, string> row, string key) =>
        row["inputs"].Split(';').Select(p => p.Split('=', 2)).Single(p => p[0] == key)[1];
}
