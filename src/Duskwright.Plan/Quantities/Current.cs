namespace Duskwright.Plan.Quantities;

/// <summary>An electric current.</summary>
/// <remarks>Any finite number; zero is a valid value. Equality is that of the number.</remarks>
public readonly record struct Current : IQuantity<Current>
{
    private Current(double value) => Milliamperes = Finite.Checked(value, "mA");

    /// <summary>The value in mA.</summary>
    public double Milliamperes { get; }

    /// <summary>The value in A.</summary>
    public double Amperes => Milliamperes / 1000;

    /// <inheritdoc/>
    public static string FieldSuffix => "_ma";

    /// <inheritdoc/>
    public double Exchange => Milliamperes;

    /// <inheritdoc/>
    public static Current FromExchange(double value) => new(value);

    /// <summary>Makes the quantity from a value in mA.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Current FromMilliamperes(double value) => new(value);

    /// <summary>Makes the quantity from a value in amperes.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Current FromAmperes(double value) => new(value * 1000);

    /// <summary>Ohm's law: the voltage that a current drops across a resistance.</summary>
    public static Voltage operator *(Current amperes, Resistance ohms) => Voltage.FromVolts(amperes.Amperes * ohms.Ohms);

    /// <summary>The charge that a current moves in a time.</summary>
    public static Charge operator *(Current amperes, Duration time) => Charge.FromAmpereHours(amperes.Amperes * time.Hours);
}
