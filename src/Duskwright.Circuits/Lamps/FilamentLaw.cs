namespace Duskwright.Circuits.Lamps;

/// <summary>A filament lamp by the handbook exponents of gas-filled and vacuum lamps.</summary>
/// <param name="RatedVolts">Rated voltage, V, more than zero.</param>
/// <param name="RatedAmps">Current at the rated voltage, A, more than zero.</param>
/// <remarks>
/// Current goes with the 0.55th power of the voltage, light with the 3.5th (usual exponents of lamp handbooks, from memory).
/// A power of 0.55 would have no resistance at nothing; a cold filament has about a tenth of its hot resistance (common practice,
/// no source), so I = I₀·u·(u² + c²)^((0.55 − 1)/2) with u = V/V₀, which is straight near nothing and the power law from u = 0.05 on.
/// </remarks>
public sealed record FilamentLaw(double RatedVolts, double RatedAmps) : LampLaw
{
    /// <summary>Exponent of current against voltage.</summary>
    public const double CurrentExponent = 0.55;

    /// <summary>Exponent of light against voltage.</summary>
    public const double LightExponent = 3.5;

    // c^0.45 is the cold resistance as a share of the hot: 0.092.
    private const double ColdShare = 0.005;

    /// <inheritdoc/>
    public override LampPoint At(double branchVolts, double resistorOhms)
    {
        var (volts, amps, siemens) = SeriesBranch.Solve(branchVolts, resistorOhms, Filament);
        return new LampPoint(amps, siemens, volts, amps, Math.Pow(Math.Abs(volts) / RatedVolts, LightExponent));
    }

    /// <summary>Heat of the lamp, nearly all of its power.</summary>
    /// <param name="volts">Voltage across the lamp, V.</param>
    /// <returns>W. Keep card away from it.</returns>
    public double Watts(double volts) => volts * Filament(volts).Amps;

    private (double Amps, double Siemens) Filament(double volts)
    {
        var share = volts / RatedVolts;
        var rounded = (share * share) + (ColdShare * ColdShare);
        var perShare = RatedAmps * Math.Pow(rounded, (CurrentExponent - 1) / 2);
        return (perShare * share, perShare / RatedVolts * (1 + ((CurrentExponent - 1) * share * share / rounded)));
    }
}
