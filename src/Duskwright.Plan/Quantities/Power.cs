namespace Duskwright.Plan.Quantities;

/// <summary>A power, electrical or given off as heat.</summary>
/// <remarks>Any finite number; zero is a valid value. Equality is that of the number.</remarks>
public readonly record struct Power : IQuantity<Power>
{
    private Power(double value) => Watts = Finite.Checked(value, "W");

    /// <summary>The value in W.</summary>
    public double Watts { get; }

    /// <inheritdoc/>
    public static string FieldSuffix => "_w";

    /// <inheritdoc/>
    public double Exchange => Watts;

    /// <inheritdoc/>
    public static Power FromExchange(double value) => new(value);

    /// <summary>Makes the quantity from a value in W.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Power FromWatts(double value) => new(value);
}
