namespace Duskwright.Circuits.Wires;

/// <summary>One short of all that were tried.</summary>
/// <param name="Source">The supply: fresh or aged.</param>
/// <param name="AtFarEnd">Whether it is at the far end of the pair or at the bank.</param>
/// <param name="ShortOhms">Its own resistance, Ω.</param>
/// <param name="Amps">Its current, A.</param>
/// <param name="Opens">Whether the fuse is sure to open; if not, the short lasts.</param>
/// <param name="WireCelsius">Temperature at which the wire in card settles while it lasts, °C; that of the room when the fuse opens.</param>
/// <param name="ShortWatts">Heat in the short itself while it lasts, W; zero when the fuse opens.</param>
public readonly record struct SweptShort(string Source, bool AtFarEnd, double ShortOhms, double Amps, bool Opens, double WireCelsius, double ShortWatts);
