namespace Duskwright.Plan.Quantities;

/// <summary>A price in the maker's own currency, of about one euro or dollar.</summary>
/// <remarks>Any finite number; zero is a valid value. Equality is that of the number.</remarks>
public readonly record struct Price : IQuantity<Price>
{
    private Price(double value) => Units = Finite.Checked(value, "units of money");

    /// <summary>The value in units of money.</summary>
    public double Units { get; }

    /// <inheritdoc/>
    public static string FieldSuffix => "";

    /// <inheritdoc/>
    public double Exchange => Units;

    /// <inheritdoc/>
    public static Price FromExchange(double value) => new(value);

    /// <summary>Makes the quantity from a value in units of money.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Price FromUnits(double value) => new(value);
}
