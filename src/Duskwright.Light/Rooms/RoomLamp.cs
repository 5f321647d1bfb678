using Duskwright.Light.Lamps;

namespace Duskwright.Light.Rooms;

/// <summary>A lamp in a room.</summary>
/// <param name="Lobe">Its light.</param>
/// <param name="At">Where it is; inside the room, m.</param>
/// <param name="Axis">Where it points; any length but zero.</param>
public sealed record RoomLamp(LampLobe Lobe, RoomPoint At, RoomPoint Axis);
