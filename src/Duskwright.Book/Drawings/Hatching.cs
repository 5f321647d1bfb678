namespace Duskwright.Book.Drawings;

/// <summary>Strokes rising to the right at 45°, cut to a rectangle.</summary>
internal static class Hatching
{
    /// <summary>Hatches a rectangle.</summary>
    /// <param name="x">Left.</param>
    /// <param name="y">Top.</param>
    /// <param name="width">Width.</param>
    /// <param name="height">Height.</param>
    /// <param name="spacing">From stroke to stroke along the lower edge.</param>
    /// <returns>Path data.</returns>
    internal static string Of(double x, double y, double width, double height, double spacing)
    {
        var hatch = new Trace();
        for (var at = x - height + spacing; at < x + width; at += spacing)
        {
            var (from, to) = (Math.Max(0, x - at), Math.Min(height, x + width - at));
            hatch.To(at + from, y + height - from).Line(at + to, y + height - to);
        }

        return hatch.Open();
    }
}
