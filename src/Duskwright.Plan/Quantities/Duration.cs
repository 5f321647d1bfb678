namespace Duskwright.Plan.Quantities;

/// <summary>A length of time.</summary>
/// <remarks>Any finite number; zero is a valid value. Equality is that of the number.</remarks>
public readonly record struct Duration : IQuantity<Duration>
{
    private Duration(double value) => Hours = Finite.Checked(value, "h");

    /// <summary>The value in h.</summary>
    public double Hours { get; }

    /// <summary>The value in s.</summary>
    public double Seconds => Hours * 3600;

    /// <inheritdoc/>
    public static string FieldSuffix => "_h";

    /// <inheritdoc/>
    public double Exchange => Hours;

    /// <inheritdoc/>
    public static Duration FromExchange(double value) => new(value);

    /// <summary>Makes the quantity from a value in h.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Duration FromHours(double value) => new(value);

    /// <summary>Makes the quantity from a value in minutes.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Duration FromMinutes(double value) => new(value / 60);
}
