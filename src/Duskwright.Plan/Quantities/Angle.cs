namespace Duskwright.Plan.Quantities;

/// <summary>A plane angle, counter-clockwise positive.</summary>
/// <remarks>Any finite number; zero is a valid value. Equality is that of the number.</remarks>
public readonly record struct Angle : IQuantity<Angle>
{
    private Angle(double value) => Degrees = Finite.Checked(value, "°");

    /// <summary>The value in °.</summary>
    public double Degrees { get; }

    /// <summary>The value in rad.</summary>
    public double Radians => Degrees * Math.PI / 180;

    /// <inheritdoc/>
    public static string FieldSuffix => "_deg";

    /// <inheritdoc/>
    public double Exchange => Degrees;

    /// <inheritdoc/>
    public static Angle FromExchange(double value) => new(value);

    /// <summary>Makes the quantity from a value in °.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Angle FromDegrees(double value) => new(value);
}
