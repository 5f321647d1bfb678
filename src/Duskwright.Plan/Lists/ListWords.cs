using System.Globalization;
using System.Text.RegularExpressions;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Plan.Lists;

/// <summary>The words of a maker's list: counts, colours, resistors, states, and not knowing.</summary>
internal static partial class ListWords
{
    private static readonly (string Word, string Part)[] Colours =
    [
        ("warm white", "led-0603-warm-white"), ("white", "led-0603-white"), ("amber", "led-0603-amber"), ("orange", "led-0603-amber"),
        ("yellow", "led-3mm-yellow"), ("red", "led-0603-red"), ("green", "led-0603-green"), ("blue", "led-0603-blue"),
        ("flickering", "flicker-3mm-yellow"), ("flicker", "flicker-3mm-yellow"),
    ];

    private static readonly string[] Numbers = ["none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    internal static IEnumerable<string> ColourWords => Colours.Select(c => c.Word);

    internal static bool IsUnknown(string text) =>
        text.Replace('’', '\'').ToLowerInvariant() is "?" or "??" or "???" or "don't know" or "dont know" or "do not know" or "unknown" or "not sure" or "no idea" or "n/a";

    /// <summary>A whole number with the word behind it: "2 amber" is 2 and "amber".</summary>
    internal static (int Count, string Word)? Count(string text)
    {
        var match = CountAndRest().Match(InDigits(text));
        return match.Success && int.TryParse(match.Groups["count"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var count)
            ? (count, match.Groups["rest"].Value.Trim())
            : null;
    }

    // "three amber": the first word as a number.
    private static string InDigits(string text) =>
        text.Trim().Split(' ', 2) is [var first, .. var rest] && Array.FindIndex(Numbers, n => string.Equals(n, first, StringComparison.OrdinalIgnoreCase)) is >= 0 and var number
            ? string.Join(' ', [number.ToString(CultureInfo.InvariantCulture), .. rest])
            : text;

    /// <summary>The built-in part that a colour or a part's id names.</summary>
    internal static string? Lamp(string text)
    {
        var plain = text.Trim().ToLowerInvariant();
        return Colours.FirstOrDefault(c => c.Word == plain).Part ?? Catalogue.Parts.Lamps.FirstOrDefault(l => l.Id == plain)?.Id;
    }

    internal static BuildingState? State(string text) => text.ToLowerInvariant() switch
    {
        "idea" or "planned" => BuildingState.Idea,
        "shell" => BuildingState.Shell,
        "fitted" or "lamps in" => BuildingState.Fitted,
        "fixed" or "glued" or "glued down" => BuildingState.Fixed,
        _ => null,
    };

    [GeneratedRegex(@"^(?<count>\d{1,6})\s*[x×]?\s*(?<rest>[^\d.,].*)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex CountAndRest();
}
