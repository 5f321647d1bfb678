using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace Duskwright.Commands;

/// <summary>Options that are read as a maker types them and refused with a sentence: what stands there, and what is allowed.</summary>
internal static class Typed
{
    /// <summary>A number with a decimal point or comma.</summary>
    internal static Option<double> Number(string name, string what, double usual, double least, double most) => Of(
        name,
        what,
        usual,
        text => Decimal(text) is { } value && value >= least && value <= most ? value : null,
        $"a number from {Plain(least)} to {Plain(most)}, without its unit,");

    /// <summary>A whole number.</summary>
    internal static Option<int> Whole(string name, string what, int usual, int least, int most) => Of(
        name,
        what,
        usual,
        text => int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value) && value >= least && value <= most ? value : (int?)null,
        $"a whole number from {least} to {most}");

    /// <summary>One of a few words.</summary>
    internal static Option<T> OneOf<T>(string name, string what, T usual)
        where T : struct, Enum => Of(
        name,
        what,
        usual,
        text => Enum.GetValues<T>().Where(v => string.Equals(v.ToString(), text, StringComparison.OrdinalIgnoreCase)).Cast<T?>().FirstOrDefault(),
        string.Join(" or ", Enum.GetNames<T>()));

    /// <summary>One of a list of ids, in any case.</summary>
    internal static Option<string> Among(string name, string what, string usual, IReadOnlyList<string> ids)
    {
        string Parse(ArgumentResult result)
        {
            if (ids.FirstOrDefault(id => string.Equals(id, result.Tokens[0].Value, StringComparison.OrdinalIgnoreCase)) is { } known)
            {
                return known;
            }

            result.AddError($"{name} is \"{result.Tokens[0].Value}\", which is not known. Known are {string.Join(", ", ids)}.");
            return usual;
        }

        return new Option<string>(name) { Description = what, DefaultValueFactory = _ => usual, CustomParser = Parse };
    }

    private static Option<T> Of<T>(string name, string what, T usual, Func<string, T?> read, string allowed)
        where T : struct
    {
        T Parse(ArgumentResult result)
        {
            if (read(result.Tokens[0].Value) is { } value)
            {
                return value;
            }

            result.AddError($"{name} is {result.Tokens[0].Value}; {allowed} is allowed.");
            return usual;
        }

        return new Option<T>(name) { Description = what, DefaultValueFactory = _ => usual, CustomParser = Parse };
    }

    // "1,500" may be one and a half or fifteen hundred: it is not guessed at.
    private static double? Decimal(string text) =>
        text.IndexOf(',', StringComparison.Ordinal) is var comma && (comma < 0 || text.Length - comma != 4)
        && double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value)
            ? value
            : null;

    internal static string Plain(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
