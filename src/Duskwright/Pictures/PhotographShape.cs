using SkiaSharp;

namespace Duskwright.Pictures;

/// <summary>The shape of a photograph as it is looked at: a camera held upright says so in the file and turns no pixel.</summary>
/// <param name="Across">Pixels across.</param>
/// <param name="High">Pixels high.</param>
public readonly record struct PhotographShape(int Across, int High)
{
    // A browser holds every pixel; 100 million are four bytes each.
    private const long MostPixels = 100_000_000;

    /// <summary>Reads the shape, and whether the bytes are a picture at all.</summary>
    /// <param name="bytes">PNG or JPEG.</param>
    /// <returns>The shape, or a sentence that says why there is none.</returns>
    public static (PhotographShape? Shape, string? Why) Of(byte[] bytes)
    {
        using var data = SKData.CreateCopy(bytes);
        using var codec = SKCodec.Create(data);
        if (codec is null || codec.EncodedFormat is not (SKEncodedImageFormat.Png or SKEncodedImageFormat.Jpeg))
        {
            return (null, "This is neither a PNG nor a JPEG picture that can be read; save it as one of the two.");
        }

        var (across, high) = (codec.Info.Width, codec.Info.Height);
        if ((long)across * high > MostPixels)
        {
            return (null, $"The picture has {(long)across * high / 1_000_000} million pixels; at most {MostPixels / 1_000_000} million are shown. Make it smaller first.");
        }

        var lies = codec.EncodedOrigin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        return (lies ? new PhotographShape(high, across) : new PhotographShape(across, high), null);
    }
}
