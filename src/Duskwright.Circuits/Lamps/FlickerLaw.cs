namespace Duskwright.Circuits.Lamps;

/// <summary>A flickering LED: a random driver that switches between a lit and a dark state.</summary>
/// <param name="Lit">The lit state, the driver's resistance included.</param>
/// <param name="OffAmpsAt3Volts">Current of the dark state at 3 V, A; it follows the voltage like a resistor's.</param>
/// <param name="OnShare">Mean share of the time that it is lit, 0 to 1.</param>
/// <param name="LeastVolts">Voltage below which the driver does not light it, V.</param>
/// <remarks>
/// Evaluated state by state, since mean light is not the light at mean current. Figures of such parts are common practice, no source.
/// The driver lets go over some tens of millivolts, which also keeps the current smooth.
/// </remarks>
public sealed record FlickerLaw(LedLaw Lit, double OffAmpsAt3Volts, double OnShare, double LeastVolts) : LampLaw
{
    private const double LettingGoVolts = 0.02;
    private const double OffStatedAtVolts = 3;

    /// <inheritdoc/>
    public override LampPoint At(double branchVolts, double resistorOhms)
    {
        var lit = SeriesBranch.Solve(branchVolts, resistorOhms, LitState);
        var darkSiemens = 1 / ((OffStatedAtVolts / OffAmpsAt3Volts) + resistorOhms);
        return new LampPoint(
            (OnShare * lit.Amps) + ((1 - OnShare) * darkSiemens * branchVolts),
            (OnShare * lit.Siemens) + ((1 - OnShare) * darkSiemens),
            lit.Volts,
            lit.Amps,
            OnShare * Lit.LightAt(lit.Amps));
    }

    /// <summary>The lamp held in one of its states.</summary>
    /// <param name="lit">Lit or dark.</param>
    /// <returns>A lamp that stays so.</returns>
    public FlickerLaw InState(bool lit) => this with { OnShare = lit ? 1 : 0 };

    private (double Amps, double Siemens) LitState(double lampVolts)
    {
        var point = Lit.At(lampVolts, 0);
        var gate = 1 / (1 + Math.Exp((LeastVolts - lampVolts) / LettingGoVolts));
        return (point.Amps * gate, (point.Siemens * gate) + (point.Amps * gate * (1 - gate) / LettingGoVolts));
    }
}
