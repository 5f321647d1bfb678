using System.Text;

namespace Duskwright.Plan.Lists;

/// <summary>The text of a list's file. Letters are never guessed at: what is no UTF-8 and does not say what else it is, is refused.</summary>
internal static class ListBytes
{
    private static readonly (byte[] Mark, Encoding Encoding)[] Marked =
    [
        (Encoding.UTF8.GetPreamble(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true)),
        (Encoding.Unicode.GetPreamble(), new UnicodeEncoding(bigEndian: false, byteOrderMark: false, throwOnInvalidBytes: true)),
        (Encoding.BigEndianUnicode.GetPreamble(), new UnicodeEncoding(bigEndian: true, byteOrderMark: false, throwOnInvalidBytes: true)),
    ];

    /// <summary>Reads the text by its byte order mark, as UTF-8 where there is none; none where it cannot be read.</summary>
    internal static string? Text(ReadOnlySpan<byte> bytes)
    {
        foreach (var (mark, encoding) in Marked)
        {
            if (bytes.StartsWith(mark))
            {
                return Decoded(encoding, bytes[mark.Length..]);
            }
        }

        return Decoded(Marked[0].Encoding, bytes) is { } text && !text.Contains('\0', StringComparison.Ordinal) ? text : null;
    }

    private static string? Decoded(Encoding encoding, ReadOnlySpan<byte> bytes)
    {
        try
        {
            return encoding.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }
}
