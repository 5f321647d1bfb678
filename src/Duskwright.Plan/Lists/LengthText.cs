using System.Globalization;
using System.Text.RegularExpressions;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Lists;

/// <summary>Lengths as makers write them: 47 cm, 470, 0,47 m, 18", 2 1/2 in, about 2 ft.</summary>
public static partial class LengthText
{
    // The inch is 25.4 mm by definition (international yard and pound agreement, 1959; from memory).
    private const double InchMillimetres = 25.4;

    internal static bool IsUnit(string word) => Millimetres(word) is not null;

    /// <summary>Reads a length.</summary>
    /// <param name="text">A number and a unit.</param>
    /// <param name="unitWord">The unit of a bare number; none where nobody named one.</param>
    /// <returns>The length, and whether millimetres had to be assumed; none where it is no length.</returns>
    public static (Length Length, bool UnitAssumed)? Read(string text, string? unitWord)
    {
        var match = NumberAndUnit().Match(text.Trim());
        if (!match.Success || !TryNumber(match.Groups["number"].Value, out var number))
        {
            return null;
        }

        if (match.Groups["over"].Value is { Length: > 0 } over)
        {
            var (above, below) = (match.Groups["above"].Value, TryNumber(over, out var parts) ? parts : 0);
            if (below <= 0 || !TryNumber(above.Length > 0 ? above : match.Groups["number"].Value, out var share))
            {
                return null;
            }

            number = above.Length > 0 ? number + (share / below) : share / below;
        }

        // "1,200 mm" may be 1200 or 1.2: it is not guessed at. In metres only 1.2 makes sense.
        var unit = match.Groups["unit"].Value;
        var said = unit.Length > 0 ? unit : unitWord ?? "mm";
        if (ThreeBehindComma().IsMatch(match.Groups["number"].Value) && Millimetres(said) < 1000)
        {
            return null;
        }

        var assumed = unit.Length == 0 && unitWord is null;
        return Millimetres(said) is { } millimetres
            ? (Length.FromMillimetres(number * millimetres), assumed)
            : null;
    }

    /// <summary>The unit that was typed behind a number.</summary>
    /// <param name="text">A number, with or without a unit.</param>
    /// <returns>The unit as it was typed; none where there is none, or it is no length.</returns>
    public static string? UnitOf(string text) => NumberAndUnit().Match(text.Trim()) is { Success: true } match && match.Groups["unit"].Value is { Length: > 0 } unit && IsUnit(unit) ? unit : null;

    /// <summary>A number with a decimal point or a decimal comma.</summary>
    internal static bool TryNumber(string text, out double number) =>
        double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out number);

    /// <summary>A unit in full: millimetres.</summary>
    internal static string Called(string unit) => unit switch { "mm" => "millimetres", "cm" => "centimetres", "m" => "metres", "in" => "inches", _ => "feet" };

    internal static double? Millimetres(string unit) => unit.ToLowerInvariant() switch
    {
        "mm" or "millimetres" or "millimeters" => 1,
        "cm" or "centimetres" or "centimeters" => 10,
        "m" or "metres" or "meters" or "metre" or "meter" => 1000,
        "in" or "inch" or "inches" or "\"" or "″" or "”" or "''" => InchMillimetres,
        "ft" or "foot" or "feet" or "'" or "′" or "’" => 12 * InchMillimetres,
        _ => null,
    };

    [GeneratedRegex("""^(about|around|roughly|ca\.?|approx\.?|~|≈)?\s*(?<number>-?\d{1,9}([.,]\d{1,9})?)((\s+(?<above>\d{1,3}))?/(?<over>\d{1,3}))?\s*(?<unit>[a-z]+\.?|"|″|”|''|'|′|’)?$""", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex NumberAndUnit();

    [GeneratedRegex(@"^\d+,\d{3}$")]
    private static partial Regex ThreeBehindComma();
}
