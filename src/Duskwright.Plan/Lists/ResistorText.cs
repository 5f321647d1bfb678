using System.Text.RegularExpressions;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Lists;

/// <summary>Resistors as makers write them: 270, 270 Ω, 270R, 1k, 1.2k, 4k7, none, don't know.</summary>
public static partial class ResistorText
{
    /// <summary>Reads a resistor.</summary>
    /// <param name="text">The words.</param>
    /// <returns>The choice; none where it is no resistor.</returns>
    public static ResistorChoice? Read(string text)
    {
        if (ListWords.IsUnknown(text))
        {
            return ResistorChoice.Unknown;
        }

        if (text.ToLowerInvariant() is "none" or "no" or "without")
        {
            return ResistorChoice.None;
        }

        // IEC 60062: the letter may stand where the decimal point would, 4k7 for 4.7 kΩ.
        var match = Ohms().Match(text.Trim());
        var inner = match.Groups["behind"].Value;
        if (!match.Success || !LengthText.TryNumber(inner.Length > 0 ? $"{match.Groups["number"].Value}.{inner}" : match.Groups["number"].Value, out var number))
        {
            return null;
        }

        var ohms = number * (match.Groups["letter"].Value is "k" or "K" ? 1000 : 1);
        return ohms > 0 ? ResistorChoice.Of(Resistance.FromOhms(ohms)) : null;
    }

    [GeneratedRegex(@"^(?<number>\d{1,7}([.,]\d{1,3})?)\s*((?<letter>[kKrR])(?<behind>\d{1,2})?)?\s*(ohms?|Ω|Ω)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Ohms();
}
