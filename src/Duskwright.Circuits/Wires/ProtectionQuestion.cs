using System.Collections.Immutable;

namespace Duskwright.Circuits.Wires;

/// <summary>What has to be protected against a short in the wiring.</summary>
/// <param name="Sources">The supply fresh and aged, at least one.</param>
/// <param name="NearOhms">Resistance of switch and joints to a short at the bank, there and back, Ω.</param>
/// <param name="FarOhms">Resistance to a short at the far end of the longest pair, there and back, Ω.</param>
/// <param name="CopperDiameterMetres">Diameter of the thinnest copper on the way, m.</param>
/// <param name="RoomCelsius">Temperature of the room, °C.</param>
/// <param name="LoadAmps">Current of all lamps, A.</param>
public sealed record ProtectionQuestion(
    ImmutableArray<ShortSource> Sources, double NearOhms, double FarOhms, double CopperDiameterMetres, double RoomCelsius, double LoadAmps);
