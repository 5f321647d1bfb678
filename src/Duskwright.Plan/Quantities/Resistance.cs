namespace Duskwright.Plan.Quantities;

/// <summary>An electric resistance.</summary>
/// <remarks>Any finite number; zero is a valid value. Equality is that of the number.</remarks>
public readonly record struct Resistance : IQuantity<Resistance>
{
    private Resistance(double value) => Ohms = Finite.Checked(value, "Ω");

    /// <summary>The value in Ω.</summary>
    public double Ohms { get; }

    /// <inheritdoc/>
    public static string FieldSuffix => "_ohm";

    /// <inheritdoc/>
    public double Exchange => Ohms;

    /// <inheritdoc/>
    public static Resistance FromExchange(double value) => new(value);

    /// <summary>Makes the quantity from a value in Ω.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Resistance FromOhms(double value) => new(value);
}
