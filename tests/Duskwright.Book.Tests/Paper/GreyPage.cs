using System.Globalization;
using System.Text;

namespace Duskwright.Book.Tests.Paper;

/// <summary>A rendered page, measured in millimetres from its left and its foot.</summary>
internal sealed class GreyPage
{
    private readonly byte[] _grey;
    private readonly int _first;
    private readonly int _width;
    private readonly int _height;
    private readonly double _dotsPerMillimetre;

    private GreyPage(byte[] grey, int first, int width, int height, double dotsPerMillimetre) =>
        (_grey, _first, _width, _height, _dotsPerMillimetre) = (grey, first, width, height, dotsPerMillimetre);

    /// <summary>Reads a portable grey map: "P5", width, height, 255, then a byte a dot, row by row from the top.</summary>
    internal static GreyPage Read(byte[] file, int dotsPerInch)
    {
        var words = new List<string>();
        var at = 0;
        while (words.Count < 4)
        {
            var end = Array.FindIndex(file, at, b => b is (byte)' ' or (byte)'\n');
            words.Add(Encoding.ASCII.GetString(file, at, end - at));
            at = end + 1;
        }

        Assert.Equal(("P5", "255"), (words[0], words[3]));
        return new GreyPage(file, at, int.Parse(words[1], CultureInfo.InvariantCulture), int.Parse(words[2], CultureInfo.InvariantCulture), dotsPerInch / 25.4);
    }

    /// <summary>Where an upright line lies that is sought near a place: the middle of its ink between two heights.</summary>
    internal double UprightNear(double x, double reach, double from, double to) =>
        Middle(x - reach, x + reach, at => Span(from, to).Sum(y => Dark(at, y)));

    /// <summary>Where a level line lies that is sought near a height: the middle of its ink between two places.</summary>
    internal double LevelNear(double y, double reach, double from, double to) =>
        Middle(y - reach, y + reach, at => Span(from, to).Sum(x => Dark(x, at)));

    /// <summary>The middle and radius of a ring sought near a place, by rays that keep off its cross.</summary>
    internal (double X, double Y, double Radius) RingNear(double x, double y, double radius)
    {
        var rays = (from quarter in Enumerable.Range(0, 4) from within in (int[])[30, 38, 45, 52, 60] select ((90 * quarter) + within) * Math.PI / 180)
            .Select(a => (Angle: a, Radius: Middle(radius - 0.5, radius + 0.5, r => Dark(x + (r * Math.Cos(a)), y + (r * Math.Sin(a)))))).ToList();

        // A ring that is a little off shows it as r + dx cos a + dy sin a; the angles lie evenly about the round.
        return (x + (2 * rays.Average(r => r.Radius * Math.Cos(r.Angle))), y + (2 * rays.Average(r => r.Radius * Math.Sin(r.Angle))), rays.Average(r => r.Radius));
    }

    // Half a dot a step.
    private IEnumerable<double> Span(double from, double to) =>
        Enumerable.Range(0, (int)((to - from) * _dotsPerMillimetre * 2)).Select(i => from + (i / (_dotsPerMillimetre * 2)));

    private double Middle(double from, double to, Func<double, double> ink)
    {
        var found = Span(from, to).Select(at => (At: at, Ink: ink(at))).ToList();
        var all = found.Sum(f => f.Ink);
        Assert.True(all > 0, $"nothing is drawn between {from:0.00} and {to:0.00} mm");
        return found.Sum(f => f.At * f.Ink) / all;
    }

    private double Dark(double x, double y)
    {
        var (column, row) = ((int)Math.Floor(x * _dotsPerMillimetre), _height - 1 - (int)Math.Floor(y * _dotsPerMillimetre));
        return column < 0 || row < 0 || column >= _width || row >= _height ? 0 : 255 - _grey[_first + (row * _width) + column];
    }
}
