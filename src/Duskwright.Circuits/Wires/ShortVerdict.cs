namespace Duskwright.Circuits.Wires;

/// <summary>What the worst short does.</summary>
/// <param name="ShortOhms">Resistance of the short that heats the wire most, Ω.</param>
/// <param name="Amps">Its current, A.</param>
/// <param name="WireCelsius">The temperature the wire settles at, °C.</param>
/// <param name="HotSpotWatts">The most heat that a short makes in itself without the fuse opening, W.</param>
/// <param name="FuseOpens">Whether a dead short is above the fuse's trip current.</param>
public sealed record ShortVerdict(double ShortOhms, double Amps, double WireCelsius, double HotSpotWatts, bool FuseOpens);
