namespace Duskwright.Plan.Quantities;

/// <summary>A length on the model itself (never the full-size original).</summary>
/// <remarks>Any finite number; zero is a valid value. Equality is that of the number.</remarks>
public readonly record struct Length : IQuantity<Length>
{
    private Length(double value) => Millimetres = Finite.Checked(value, "mm");

    /// <summary>The value in mm.</summary>
    public double Millimetres { get; }

    /// <summary>The value in m.</summary>
    public double Metres => Millimetres / 1000;

    /// <inheritdoc/>
    public static string FieldSuffix => "_mm";

    /// <inheritdoc/>
    public double Exchange => Millimetres;

    /// <inheritdoc/>
    public static Length FromExchange(double value) => new(value);

    /// <summary>Makes the quantity from a value in mm.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Length FromMillimetres(double value) => new(value);

    /// <summary>Makes the quantity from a value in metres.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Length FromMetres(double value) => new(value * 1000);

    /// <summary>Two lengths end to end.</summary>
    public static Length operator +(Length left, Length right) => new(left.Millimetres + right.Millimetres);

    /// <summary>A length so many times over.</summary>
    public static Length operator *(Length length, double factor) => new(length.Millimetres * factor);
}
