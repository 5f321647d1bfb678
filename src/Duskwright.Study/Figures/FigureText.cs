using System.Globalization;

namespace Duskwright.Study.Figures;

/// <summary>Figures as a maker reads them: the right prefix, two or three digits, a thin space before the unit.</summary>
public static class FigureText
{
    private const char ThinSpace = '\u2009';

    /// <summary>The value with its unit: "5.9 mA", "1.36 m", "4.1 h".</summary>
    /// <param name="figure">The figure.</param>
    /// <returns>The text.</returns>
    public static string Of(Figure figure) => Of(figure.Value, figure.Unit);

    /// <summary>The range with its unit: "5.2–6.6 mA".</summary>
    /// <param name="figure">The figure.</param>
    /// <returns>The text; nothing where no range has been worked out or both ends read the same.</returns>
    public static string? Range(Figure figure)
    {
        if (figure is not { Low: { } low, High: { } high })
        {
            return null;
        }

        var (factor, unit) = Prefix(Math.Max(Math.Abs(low), Math.Abs(high)), figure.Unit);
        var (from, to) = (Digits(low * factor), Digits(high * factor));
        return from == to ? null : Joined($"{from}–{to}", unit);
    }

    /// <summary>A value with its unit.</summary>
    /// <param name="value">The value in the unit given, without prefix.</param>
    /// <param name="unit">The unit's symbol.</param>
    /// <returns>The text.</returns>
    public static string Of(double value, string unit)
    {
        if (unit == "s" && value is > 0 and < LongestFraction)
        {
            return Joined($"1/{Digits(Rounded(1 / value))}", unit);
        }

        var (factor, prefixed) = Prefix(Math.Abs(value), unit);
        return Joined(Digits(value * factor), prefixed);
    }

    // Shutter times are written as cameras do, 1/60, up to this many seconds and to two digits.
    private const double LongestFraction = 0.3;

    private static double Rounded(double value)
    {
        var size = Math.Pow(10, Math.Max(0, Math.Floor(Math.Log10(value)) - 1));
        return size * Math.Round(value / size);
    }

    // Lightness is written symbol first, as CIE does.
    private static string Joined(string digits, string unit) => unit switch
    {
        "" => digits,
        "L*" => $"L*{ThinSpace}{digits}",
        _ => $"{digits}{ThinSpace}{unit}",
    };

    private static (double Factor, string Unit) Prefix(double magnitude, string unit) => unit switch
    {
        "A" when magnitude < 0.9995 => (1e3, "mA"),
        "m" when magnitude < 0.9995 => (1e3, "mm"),
        "W" when magnitude < 0.9995 => (1e3, "mW"),
        "V" when magnitude is > 0 and < 0.1 => (1e3, "mV"),
        "sr" => (1e3, "msr"),
        "Ω" when magnitude >= 1e3 => (1e-3, "kΩ"),
        "share" => (100, "%"),
        "money" => (1, ""),
        _ => (1, unit),
    };

    private static string Digits(double value)
    {
        var size = Math.Abs(value);
        var decimals = size switch
        {
            0 => 0,
            >= 99.95 => 0,
            >= 9.995 => Math.Abs(value - Math.Round(value)) < 0.005 ? 0 : 1,
            >= 0.995 => Math.Abs(value - Math.Round(value, 1)) < 0.005 ? (Math.Abs(value - Math.Round(value)) < 0.0005 ? 0 : 1) : 2,
            _ => 2,
        };
        var text = value.ToString($"N{decimals}", CultureInfo.InvariantCulture);
        return text.Replace(",", ThinSpace.ToString(), StringComparison.Ordinal).Replace('-', '−');
    }
}
