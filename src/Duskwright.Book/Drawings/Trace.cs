using System.Globalization;
using System.Text;

namespace Duskwright.Book.Drawings;

/// <summary>Writes path data (SVG 2, chapter 9) to a hundredth of a unit, the same bytes on every machine.</summary>
public sealed class Trace
{
    private readonly StringBuilder _data = new();

    /// <summary>A closed rectangle.</summary>
    /// <param name="x">Left.</param>
    /// <param name="y">Top.</param>
    /// <param name="width">Width.</param>
    /// <param name="height">Height.</param>
    /// <returns>Path data.</returns>
    public static string Rectangle(double x, double y, double width, double height) =>
        new Trace().To(x, y).Line(x + width, y).Line(x + width, y + height).Line(x, y + height).Closed();

    /// <summary>A circle.</summary>
    /// <param name="x">Middle.</param>
    /// <param name="y">Middle.</param>
    /// <param name="radius">Radius.</param>
    /// <returns>Path data.</returns>
    public static string Circle(double x, double y, double radius) => Ellipse(x, y, radius, radius);

    /// <summary>An ellipse along the axes.</summary>
    /// <param name="x">Middle.</param>
    /// <param name="y">Middle.</param>
    /// <param name="across">Half its width.</param>
    /// <param name="down">Half its height.</param>
    /// <returns>Path data.</returns>
    public static string Ellipse(double x, double y, double across, double down) =>
        $"M{N(x - across)} {N(y)}a{N(across)} {N(down)} 0 1 0 {N(2 * across)} 0a{N(across)} {N(down)} 0 1 0 {N(-2 * across)} 0z";

    /// <summary>One straight line.</summary>
    /// <param name="x1">From.</param>
    /// <param name="y1">From.</param>
    /// <param name="x2">To.</param>
    /// <param name="y2">To.</param>
    /// <returns>Path data.</returns>
    public static string Segment(double x1, double y1, double x2, double y2) => new Trace().To(x1, y1).Line(x2, y2).Open();

    /// <summary>A chain of straight lines.</summary>
    /// <param name="points">Its corners.</param>
    /// <param name="closed">Whether it returns to its first point.</param>
    /// <returns>Path data.</returns>
    public static string Chain(IEnumerable<(double X, double Y)> points, bool closed = false)
    {
        var trace = new Trace();
        var first = true;
        foreach (var (x, y) in points)
        {
            trace = first ? trace.To(x, y) : trace.Line(x, y);
            first = false;
        }

        return closed ? trace.Closed() : trace.Open();
    }

    /// <summary>A chain with its corners rounded, as wire lies.</summary>
    /// <param name="points">Its corners.</param>
    /// <param name="radius">The most that is cut off at either side of a corner.</param>
    /// <returns>Path data.</returns>
    public static string Rounded(IReadOnlyList<(double X, double Y)> points, double radius)
    {
        if (points.Count < 3)
        {
            return Chain(points);
        }

        var trace = new Trace().To(points[0].X, points[0].Y);
        for (var i = 1; i < points.Count - 1; i++)
        {
            var (from, corner, onward) = (Toward(points[i], points[i - 1], radius), points[i], Toward(points[i], points[i + 1], radius));
            trace.Line(from.X, from.Y).Curve(corner.X, corner.Y, onward.X, onward.Y);
        }

        return trace.Line(points[^1].X, points[^1].Y).Open();
    }

    /// <summary>Lifts the pen and sets it down.</summary>
    /// <param name="x">Where.</param>
    /// <param name="y">Where.</param>
    /// <returns>Itself.</returns>
    public Trace To(double x, double y) => Add('M', x, y);

    /// <summary>Draws a straight line.</summary>
    /// <param name="x">Where to.</param>
    /// <param name="y">Where to.</param>
    /// <returns>Itself.</returns>
    public Trace Line(double x, double y) => Add('L', x, y);

    /// <summary>Draws a curve that leaves and arrives towards one corner.</summary>
    /// <param name="cornerX">The corner.</param>
    /// <param name="cornerY">The corner.</param>
    /// <param name="x">Where to.</param>
    /// <param name="y">Where to.</param>
    /// <returns>Itself.</returns>
    public Trace Curve(double cornerX, double cornerY, double x, double y)
    {
        _data.Append('Q').Append(N(cornerX)).Append(' ').Append(N(cornerY)).Append(' ').Append(N(x)).Append(' ').Append(N(y));
        return this;
    }

    /// <summary>The path as it stands.</summary>
    /// <returns>Path data.</returns>
    public string Open() => _data.ToString();

    /// <summary>The path, brought back to where the pen was last set down.</summary>
    /// <returns>Path data.</returns>
    public string Closed() => _data.Append('z').ToString();

    internal static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    // At most half way to the neighbour, so that two corners never overlap.
    private static (double X, double Y) Toward((double X, double Y) from, (double X, double Y) to, double distance)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        var share = length > 0 ? Math.Min(distance, length / 2) / length : 0;
        return (from.X + (dx * share), from.Y + (dy * share));
    }

    private Trace Add(char command, double x, double y)
    {
        _data.Append(command).Append(N(x)).Append(' ').Append(N(y));
        return this;
    }
}
