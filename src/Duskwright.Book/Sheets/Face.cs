using SkiaSharp;

namespace Duskwright.Book.Sheets;

/// <summary>The faces of the book, embedded in the program and in every file it prints.</summary>
internal static class Face
{
    // One point is 25.4/72 mm; drawing is in millimetres.
    private const float MillimetresPerPoint = 25.4f / 72;

    internal static SKTypeface Speaks { get; } = Load("Fraunces_600SemiBold");

    internal static SKTypeface Reports { get; } = Load("Inter_400Regular");

    internal static SKTypeface Strong { get; } = Load("Inter_600SemiBold");

    internal static SKFont At(SKTypeface face, float points) =>
        new(face, points * MillimetresPerPoint) { Subpixel = true, Hinting = SKFontHinting.None, LinearMetrics = true };

    private static SKTypeface Load(string name)
    {
        using var stream = typeof(Face).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"The face {name} is missing from the program.");
        using var data = SKData.Create(stream);
        return SKTypeface.FromData(data);
    }
}
