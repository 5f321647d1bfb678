namespace Duskwright.Circuits.Supplies;

/// <summary>A power bank with lamps and a resistor that keeps it awake.</summary>
/// <param name="Amps">Current in all, A.</param>
/// <param name="BleedWatts">Heat of the resistor, W. It wants a part rated for twice that, away from card.</param>
/// <param name="Seconds">How long the store lasts, s.</param>
/// <param name="MaySleep">Whether the bank may fall asleep all the same.</param>
public sealed record BleedVerdict(double Amps, double BleedWatts, double Seconds, bool MaySleep);
