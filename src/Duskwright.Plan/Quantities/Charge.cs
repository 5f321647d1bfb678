namespace Duskwright.Plan.Quantities;

/// <summary>An electric charge as cells are rated.</summary>
/// <remarks>Any finite number; zero is a valid value. Equality is that of the number.</remarks>
public readonly record struct Charge : IQuantity<Charge>
{
    private Charge(double value) => AmpereHours = Finite.Checked(value, "Ah");

    /// <summary>The value in Ah.</summary>
    public double AmpereHours { get; }

    /// <summary>The value in C.</summary>
    public double Coulombs => AmpereHours * 3600;

    /// <inheritdoc/>
    public static string FieldSuffix => "_ah";

    /// <inheritdoc/>
    public double Exchange => AmpereHours;

    /// <inheritdoc/>
    public static Charge FromExchange(double value) => new(value);

    /// <summary>Makes the quantity from a value in Ah.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Charge FromAmpereHours(double value) => new(value);

    /// <summary>How long a charge lasts at a current.</summary>
    public static Duration operator /(Charge charge, Current amperes) => Duration.FromHours(charge.AmpereHours / amperes.Amperes);
}
