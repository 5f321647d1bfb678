using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Parts;

/// <summary>Preferred values of resistors, IEC 60063.</summary>
public static class PreferredValues
{
    /// <summary>The twelve values of a decade, E12 (IEC 60063).</summary>
    public static ItemList<int> E12 { get; } = [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82];

    /// <summary>The twenty-four values of a decade, E24 (IEC 60063).</summary>
    public static ItemList<int> E24 { get; } =
        [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];

    /// <summary>The smallest preferred value not below a computed one.</summary>
    /// <param name="series">The values of one decade, 10 to 99.</param>
    /// <param name="exact">More than zero.</param>
    /// <returns>The value; an exact hit is itself.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is zero or less.</exception>
    public static Resistance NextUp(ItemList<int> series, Resistance exact)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(exact.Ohms);
        var decade = Math.Pow(10, Math.Floor(Math.Log10(exact.Ohms)) - 1);
        var wanted = exact.Ohms / decade;
        foreach (var value in series)
        {
            // One part in a million million absorbs the rounding of the decade, so that 390 asks for 390.
            if (value >= wanted * (1 - 1e-12))
            {
                return Resistance.FromOhms(Rounded(value, decade));
            }
        }

        return Resistance.FromOhms(Rounded(series[0] * 10, decade));
    }

    private static double Rounded(int value, double decade) =>
        decade >= 1 ? value * Math.Round(decade) : value / Math.Round(1 / decade);
}
