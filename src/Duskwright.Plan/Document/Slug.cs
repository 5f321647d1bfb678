using System.Globalization;
using System.Text;

namespace Duskwright.Plan.Document;

/// <summary>A name turned into the plain form by which a document refers to it.</summary>
public static class Slug
{
    /// <summary>Small letters and digits of a name, words joined by hyphens: "The Drowned Bell" is "the-drowned-bell".</summary>
    /// <param name="name">Any text.</param>
    /// <returns>The plain form; letters with accents and of other scripts stay as they are.</returns>
    public static string Of(string name)
    {
        var plain = new StringBuilder(name.Length);
        foreach (var letter in name)
        {
            if (char.IsLetterOrDigit(letter))
            {
                plain.Append(char.ToLowerInvariant(letter));
            }
            else if (CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark
                && letter is not ('\'' or '’')
                && plain.Length > 0
                && plain[^1] != '-')
            {
                plain.Append('-');
            }
        }

        return plain.ToString().TrimEnd('-');
    }
}
