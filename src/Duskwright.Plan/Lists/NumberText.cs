using System.Text.RegularExpressions;

namespace Duskwright.Plan.Lists;

/// <summary>Numbers as makers write them: 2.5, 2,5, 2 1/2, or with the unit behind: 5 mA; a length in any unit.</summary>
public static partial class NumberText
{
    /// <summary>Reads a number.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="unit">The unit of the field; none where it has none.</param>
    /// <returns>The number in that unit; none where it is no number, has another unit, or may be read in two ways ("1,500").</returns>
    public static double? Read(string text, string? unit = null)
    {
        if (unit is not null && LengthText.Millimetres(unit) is { } millimetres)
        {
            return LengthText.Read(text, unit)?.Length.Millimetres / millimetres;
        }

        var match = Number().Match(text.Trim());
        if (!match.Success || (match.Groups["unit"].Value is { Length: > 0 } said && !string.Equals(said, unit, StringComparison.OrdinalIgnoreCase)))
        {
            return null;
        }

        // "0,125" can only be a decimal; "1,500" may be one and a half or fifteen hundred and is not guessed at.
        var whole = match.Groups["number"].Value;
        if (Thousands().IsMatch(whole) || !LengthText.TryNumber(whole, out var number))
        {
            return null;
        }

        var (above, over) = (match.Groups["above"].Value, match.Groups["over"].Value);
        if (over.Length == 0)
        {
            return number;
        }

        if (!LengthText.TryNumber(over, out var below) || below == 0 || !LengthText.TryNumber(above.Length > 0 ? above : whole, out var share))
        {
            return null;
        }

        return above.Length == 0 ? number / below : number < 0 ? number - (share / below) : number + (share / below);
    }

    [GeneratedRegex("""^(?<number>-?\d{1,9}([.,]\d{1,20})?)((\s+(?<above>\d{1,3}))?/(?<over>\d{1,3}))?\s*(?<unit>[^\d\s.,/-]\S*)?$""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Number();

    [GeneratedRegex(@"^-?[1-9]\d{0,2},\d{3}$")]
    private static partial Regex Thousands();
}
