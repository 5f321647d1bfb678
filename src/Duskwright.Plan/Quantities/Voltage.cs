namespace Duskwright.Plan.Quantities;

/// <summary>An electric potential difference.</summary>
/// <remarks>Any finite number; zero is a valid value. Equality is that of the number.</remarks>
public readonly record struct Voltage : IQuantity<Voltage>
{
    private Voltage(double value) => Volts = Finite.Checked(value, "V");

    /// <summary>The value in V.</summary>
    public double Volts { get; }

    /// <inheritdoc/>
    public static string FieldSuffix => "_v";

    /// <inheritdoc/>
    public double Exchange => Volts;

    /// <inheritdoc/>
    public static Voltage FromExchange(double value) => new(value);

    /// <summary>Makes the quantity from a value in V.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Voltage FromVolts(double value) => new(value);

    /// <summary>Ohm's law: the current that a voltage drives through a resistance.</summary>
    public static Current operator /(Voltage volts, Resistance ohms) => Current.FromAmperes(volts.Volts / ohms.Ohms);

    /// <summary>Ohm's law: the resistance across which a current drops a voltage.</summary>
    public static Resistance operator /(Voltage volts, Current amperes) => Resistance.FromOhms(volts.Volts / amperes.Amperes);

    /// <summary>The power that a current gives up across a voltage.</summary>
    public static Power operator *(Voltage volts, Current amperes) => Power.FromWatts(volts.Volts * amperes.Amperes);

    /// <summary>What is left of a voltage after a drop.</summary>
    public static Voltage operator -(Voltage left, Voltage right) => new(left.Volts - right.Volts);
}
