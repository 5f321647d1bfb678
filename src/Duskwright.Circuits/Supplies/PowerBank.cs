namespace Duskwright.Circuits.Supplies;

/// <summary>A power bank: a regulated supply with a store that goes to sleep under a small load.</summary>
/// <param name="Volts">Its output, V.</param>
/// <param name="LeastAmps">
/// The load that surely keeps it awake, A; under it it may switch itself off. No standard value exists: a few dozen milliamperes are usual, and who
/// does not know his bank's takes twice that.
/// </param>
/// <param name="StoreCoulombs">Charge that it gives at its output, C.</param>
public sealed record PowerBank(double Volts, double LeastAmps, double StoreCoulombs)
{
    /// <summary>Whether a load may let it fall asleep.</summary>
    /// <param name="loadAmps">The lamps' current, A.</param>
    /// <returns>True when it is under the least load.</returns>
    public bool MaySleep(double loadAmps) => loadAmps < LeastAmps;

    /// <summary>The largest resistor across the output that keeps it awake: the volts over the current that is missing.</summary>
    /// <param name="loadAmps">The lamps' current, A.</param>
    /// <returns>Ω; infinite when the lamps alone do.</returns>
    public double MostBleedOhms(double loadAmps)
    {
        var missing = LeastAmps - loadAmps;
        return missing > 0 ? Volts / missing : double.PositiveInfinity;
    }

    /// <summary>What a resistor across the output costs.</summary>
    /// <param name="loadAmps">The lamps' current, A.</param>
    /// <param name="bleedOhms">The resistor, Ω, more than zero; infinite for none.</param>
    /// <returns>Current in all, heat, hours.</returns>
    public BleedVerdict With(double loadAmps, double bleedOhms)
    {
        var amps = loadAmps + (Volts / bleedOhms);
        return new BleedVerdict(amps, Volts * Volts / bleedOhms, StoreCoulombs / amps, MaySleep(amps));
    }
}
