using System.Globalization;
using System.Text.RegularExpressions;

namespace Duskwright.Parts;

/// <summary>A piece of a sentence: words, or the place of a figure.</summary>
/// <param name="Text">The words; empty for a figure.</param>
/// <param name="Figure">Which figure; none for words.</param>
public readonly record struct SaidPiece(string Text, int? Figure);

/// <summary>Sentences cut at the places of their figures.</summary>
public static partial class SaidPieces
{
    /// <summary>Cuts a sentence.</summary>
    /// <param name="words">A sentence with places <c>{0}</c>, <c>{1}</c>.</param>
    /// <returns>The pieces in order.</returns>
    public static IReadOnlyList<SaidPiece> Of(string words)
    {
        var pieces = new List<SaidPiece>();
        var from = 0;
        foreach (Match place in Places().Matches(words))
        {
            pieces.Add(new SaidPiece(words[from..place.Index], null));
            pieces.Add(new SaidPiece("", int.Parse(place.Groups[1].ValueSpan, CultureInfo.InvariantCulture)));
            from = place.Index + place.Length;
        }

        pieces.Add(new SaidPiece(words[from..], null));
        return pieces;
    }

    [GeneratedRegex(@"\{(\d+)\}")]
    private static partial Regex Places();
}
