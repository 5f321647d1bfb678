using Duskwright.Book.Drawings;
using SkiaSharp;

namespace Duskwright.Book.Sheets;

/// <summary>The faces of the book, embedded in the program and in every file it prints.</summary>
internal static class Face
{
    // One point is 25.4/72 mm; drawing is in millimetres.
    private const float MillimetresPerPoint = 25.4f / 72;

    internal static SKTypeface Speaks { get; } = Load("Fraunces_600SemiBold");

    internal static SKTypeface Murmurs { get; } = Load("Fraunces_500Medium_Italic");

    internal static SKTypeface Reports { get; } = Load("Inter_400Regular");

    internal static SKTypeface Strong { get; } = Load("Inter_600SemiBold");

    internal static SKTypeface Of(FaceName face) => face switch { FaceName.Speaks => Speaks, FaceName.Murmurs => Murmurs, FaceName.Strong => Strong, _ => Reports };

    internal static SKFont At(SKTypeface face, float points) => Sized(face, points * MillimetresPerPoint);

    internal static SKFont Sized(SKTypeface face, float size) => new(face, size) { Subpixel = true, Hinting = SKFontHinting.None, LinearMetrics = true };

    // The thin space of figures has no shape in every face; a plain one prints alike.
    internal static string Plain(string text) => text.Replace('\u2009', ' ');

    private static SKTypeface Load(string name)
    {
        using var stream = typeof(Face).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"The face {name} is missing from the program.");
        using var data = SKData.Create(stream);
        return SKTypeface.FromData(data);
    }
}
