namespace Duskwright.Circuits.Wires;

/// <summary>What a fuse, or none, leaves of the danger.</summary>
/// <param name="Fuse">The fuse; none for bare wiring.</param>
/// <param name="CarriesLoad">Whether it carries the lamps with the usual margin and bears the voltage.</param>
/// <param name="OpensEverywhere">Whether a dead short opens it at the near and far end, with fresh and aged cells.</param>
/// <param name="Hottest">The lasting short that heats the wire most.</param>
/// <param name="HotSpot">The lasting short that makes most heat in itself.</param>
/// <param name="Scorches">Whether the wire of the hottest short reaches the temperature at which card browns.</param>
public sealed record ProtectionVerdict(
    FuseRange? Fuse, bool CarriesLoad, bool OpensEverywhere, SweptShort Hottest, SweptShort HotSpot, bool Scorches);
