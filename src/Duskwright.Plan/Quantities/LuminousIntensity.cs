namespace Duskwright.Plan.Quantities;

/// <summary>Light sent out in a direction by a lamp.</summary>
/// <remarks>Any finite number; zero is a valid value. Equality is that of the number.</remarks>
public readonly record struct LuminousIntensity : IQuantity<LuminousIntensity>
{
    private LuminousIntensity(double value) => Millicandelas = Finite.Checked(value, "mcd");

    /// <summary>The value in mcd.</summary>
    public double Millicandelas { get; }

    /// <summary>The value in cd.</summary>
    public double Candelas => Millicandelas / 1000;

    /// <inheritdoc/>
    public static string FieldSuffix => "_mcd";

    /// <inheritdoc/>
    public double Exchange => Millicandelas;

    /// <inheritdoc/>
    public static LuminousIntensity FromExchange(double value) => new(value);

    /// <summary>Makes the quantity from a value in mcd.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static LuminousIntensity FromMillicandelas(double value) => new(value);
}
