using System.Globalization;
using System.Text.Json;

namespace Duskwright.Plan.Format;

/// <summary>Finds escaped surrogates without their partner: <c>"\ud800"</c> is sound JSON and yet no text (RFC 8259, section 8.2).</summary>
internal static class HalfCharacters
{
    /// <summary>Where the first string that holds one begins, in bytes; none where there is none.</summary>
    /// <param name="json">JSON that has been parsed without complaint but for its strings.</param>
    /// <param name="maxDepth">The depth to which it is read.</param>
    internal static int? FirstIn(ReadOnlySpan<byte> json, int maxDepth)
    {
        var reader = new Utf8JsonReader(json, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true, MaxDepth = maxDepth });
        try
        {
            while (reader.Read())
            {
                if (reader.ValueIsEscaped && HasOne(reader.ValueSpan))
                {
                    return (int)reader.TokenStartIndex;
                }
            }
        }
        catch (JsonException)
        {
            // What else is wrong with the text is told, with its place, by the parser proper.
            return null;
        }

        return null;
    }

    private static bool HasOne(ReadOnlySpan<byte> escaped)
    {
        var waitsForPartner = false;
        for (var at = 0; at < escaped.Length;)
        {
            var isEscape = escaped[at] == '\\';
            var isCode = isEscape && escaped[at + 1] == 'u';
            var code = isCode ? (char)ushort.Parse(escaped.Slice(at + 2, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture) : '\0';
            if (waitsForPartner != char.IsLowSurrogate(code))
            {
                return true;
            }

            waitsForPartner = char.IsHighSurrogate(code);
            at += isCode ? 6 : isEscape ? 2 : 1;
        }

        return waitsForPartner;
    }
}
