namespace Duskwright.Circuits.Lamps;

/// <summary>A filament lamp by the handbook exponents of gas-filled and vacuum lamps.</summary>
/// <param name="RatedVolts">Rated voltage, V.</param>
/// <param name="RatedAmps">Current at the rated voltage, A.</param>
/// <remarks>
/// Current goes with the 0.55th power of the voltage, light with the 3.5th (usual exponents of lamp handbooks, from memory).
/// Below a twentieth of the rated voltage the filament is cold and the current straight.
/// </remarks>
public sealed record FilamentLaw(double RatedVolts, double RatedAmps) : LampLaw
{
    /// <summary>Exponent of current against voltage.</summary>
    public const double CurrentExponent = 0.55;

    /// <summary>Exponent of light against voltage.</summary>
    public const double LightExponent = 3.5;

    private const double ColdShare = 0.05;

    /// <inheritdoc/>
    public override LampPoint At(double branchVolts, double resistorOhms)
    {
        var (volts, amps, siemens) = SeriesBranch.Solve(branchVolts, resistorOhms, Filament);
        return new LampPoint(amps, siemens, volts, amps, Math.Pow(Math.Abs(volts) / RatedVolts, LightExponent));
    }

    private (double Amps, double Siemens) Filament(double volts)
    {
        var share = Math.Abs(volts) / RatedVolts;
        if (share <= ColdShare)
        {
            var coldSiemens = RatedAmps * Math.Pow(ColdShare, CurrentExponent) / (ColdShare * RatedVolts);
            return (coldSiemens * volts, coldSiemens);
        }

        var amps = RatedAmps * Math.Pow(share, CurrentExponent);
        return (Math.CopySign(amps, volts), CurrentExponent * amps / Math.Abs(volts));
    }
}
