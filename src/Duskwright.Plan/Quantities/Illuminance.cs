namespace Duskwright.Plan.Quantities;

/// <summary>Light falling on a surface.</summary>
/// <remarks>Any finite number; zero is a valid value. Equality is that of the number.</remarks>
public readonly record struct Illuminance : IQuantity<Illuminance>
{
    private Illuminance(double value) => Lux = Finite.Checked(value, "lx");

    /// <summary>The value in lx.</summary>
    public double Lux { get; }

    /// <inheritdoc/>
    public static string FieldSuffix => "_lx";

    /// <inheritdoc/>
    public double Exchange => Lux;

    /// <inheritdoc/>
    public static Illuminance FromExchange(double value) => new(value);

    /// <summary>Makes the quantity from a value in lx.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Illuminance FromLux(double value) => new(value);
}
