namespace Duskwright.Store.Pictures;

/// <summary>What the first bytes of a picture say about it.</summary>
internal static class PictureBytes
{
    /// <summary>The largest picture that is kept, bytes.</summary>
    internal const int Most = 32 * 1024 * 1024;

    // Source: PNG, ISO/IEC 15948:2004, 5.2 (file signature); JPEG, ISO/IEC 10918-1, Annex B (SOI followed by a marker).
    private static ReadOnlySpan<byte> Png => [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    private static ReadOnlySpan<byte> Jpeg => [0xFF, 0xD8, 0xFF];

    internal static string? MediaType(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith(Png) ? "image/png" : bytes.StartsWith(Jpeg) ? "image/jpeg" : null;
}
