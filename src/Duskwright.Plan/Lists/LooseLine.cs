using System.Text.RegularExpressions;

namespace Duskwright.Plan.Lists;

/// <summary>A line typed without commas, as one would say it: "Mill house 4 LEDs 60 cm", "Church - 3 - 80 cm".</summary>
internal static partial class LooseLine
{
    /// <summary>Takes such a line apart.</summary>
    /// <param name="line">A line without commas, semicolons and tabs.</param>
    /// <returns>Name, LEDs and distance as far as they are there; the line as it stands where it may all be a name, as in "Pier 2".</returns>
    internal static IReadOnlyList<string> Fields(string line)
    {
        var parts = Dashes().Split(line);
        if (parts.Length > 1 && IsCount(parts[1]))
        {
            return parts;
        }

        for (var match = Number().Match(line); match.Success; match = match.NextMatch())
        {
            var (name, word, rest) = (line[..match.Index].TrimEnd(' ', ':'), match.Groups["word"].Value, line[(match.Index + match.Length)..].Trim());
            if (name.Length > 0 && (rest.Length == 0 ? word.Length > 0 : IsDistance(rest)))
            {
                return rest.Length == 0 ? [name, match.Groups["count"].Value] : [name, match.Groups["count"].Value, rest];
            }
        }

        return [line];
    }

    private static bool IsCount(string text) => ListWords.IsUnknown(text) || ListWords.Count(text) is not null;

    private static bool IsDistance(string text) => ListWords.IsUnknown(text) || LengthText.Read(text, null) is { UnitAssumed: false };

    [GeneratedRegex(@"\s+[-–—]\s+|:\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Dashes();

    [GeneratedRegex(@"(?<=\s)(?<count>\d{1,3})(\s*(?<word>leds?|lamps?|lights?)\b|(?=\s))", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Number();
}
