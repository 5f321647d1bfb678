namespace Duskwright.Circuits.Lamps;

/// <summary>A plain LED: V = V_ref + n·V_T·ln(I/I_ref) + R·(I − I_ref).</summary>
/// <param name="RefVolts">V_ref, voltage at the reference current, V.</param>
/// <param name="RefAmps">I_ref, A, more than zero.</param>
/// <param name="Ideality">n, about 2 for an LED.</param>
/// <param name="SeriesOhms">R, resistance inside the part, Ω.</param>
/// <param name="TemperatureKelvin">Temperature of the junction, K; V_T = kT/q.</param>
/// <remarks>
/// Shockley's diode with series resistance, referred to one point of its curve; its "− 1" is left out, which matters only below the
/// saturation current (under 1 pA). Light is proportional to current (Kakani and Bhandari, example 3.19)
/// unless a droop is stated.
/// </remarks>
public sealed record LedLaw(double RefVolts, double RefAmps, double Ideality, double SeriesOhms, double TemperatureKelvin = LedLaw.RoomKelvin) : LampLaw
{
    /// <summary>20 °C, at which catalogue curves are stated.</summary>
    public const double RoomKelvin = 293.15;

    /// <summary>Boltzmann's constant over the elementary charge, V/K (exact SI constants).</summary>
    public const double BoltzmannOverCharge = 1.380649e-23 / 1.602176634e-19;

    // Where neither lamp nor lead has any resistance, a micro-ohm keeps the closed form; it moves 20 mA by 20 nV.
    internal const double LeastOhms = 1e-6;

    /// <summary>Change of a white LED's voltage per kelvin, V/K (Khanna, Fundamentals of Solid-State Lighting, eq. 14.1).</summary>
    public const double WhiteVoltsPerKelvin = -0.003;

    private const double ZeroCelsiusKelvin = 273.15;

    /// <summary>Current at which droop has halved the light that each ampere gives, A; infinite for light in step with current.</summary>
    public double DroopAmps { get; init; } = double.PositiveInfinity;

    /// <inheritdoc/>
    public override LampPoint At(double branchVolts, double resistorOhms)
    {
        var thermalVolts = Ideality * BoltzmannOverCharge * TemperatureKelvin;
        var ohms = Math.Max(SeriesOhms + resistorOhms, LeastOhms);

        // With w = I·ohms/(n·V_T) the law reads w + ln w = z, which is Wright's omega function.
        var z = Math.Log(RefAmps * ohms / thermalVolts) + ((branchVolts - RefVolts + (SeriesOhms * RefAmps)) / thermalVolts);
        var w = WrightOmega.Of(z);
        var amps = w * thermalVolts / ohms;
        var siemens = w / (ohms * (1 + w));
        return new LampPoint(
            amps + (LeakSiemens * branchVolts),
            siemens + LeakSiemens,
            branchVolts - (amps * resistorOhms),
            amps,
            LightAt(amps));
    }

    /// <summary>Light at a current, 1 at the reference current: I/I_ref·(1 + I_ref/I_d)/(1 + I/I_d), where I_d is <see cref="DroopAmps"/>.</summary>
    /// <param name="amps">A, zero or more.</param>
    /// <returns>Share of the light at the reference current.</returns>
    public double LightAt(double amps) => amps / RefAmps * (1 + (RefAmps / DroopAmps)) / (1 + (amps / DroopAmps));

    /// <summary>The same lamp with its junction at another temperature.</summary>
    /// <param name="celsius">Temperature of the junction, °C, above −273.15.</param>
    /// <param name="voltsPerKelvin">Change of its voltage per kelvin, V/K.</param>
    /// <returns>The lamp then.</returns>
    public LedLaw AtCelsius(double celsius, double voltsPerKelvin = WhiteVoltsPerKelvin)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(celsius, -ZeroCelsiusKelvin);
        var kelvin = celsius + ZeroCelsiusKelvin;
        return this with { RefVolts = RefVolts + (voltsPerKelvin * (kelvin - TemperatureKelvin)), TemperatureKelvin = kelvin };
    }

    /// <summary>Voltage across the lamp at a current.</summary>
    /// <param name="amps">More than zero, A.</param>
    /// <returns>Voltage, V.</returns>
    public double VoltsAt(double amps) =>
        RefVolts + (Ideality * BoltzmannOverCharge * TemperatureKelvin * Math.Log(amps / RefAmps)) + (SeriesOhms * (amps - RefAmps));
}
