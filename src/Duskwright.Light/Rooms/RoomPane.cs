namespace Duskwright.Light.Rooms;

/// <summary>A pane in a wall of a room.</summary>
/// <param name="Wall">The wall.</param>
/// <param name="Opening">The opening in the wall's axes (across along x, or along y on the left and right walls; along up z), inside the wall and clear of other panes, m.</param>
/// <param name="Sheet">What it is glazed with.</param>
public sealed record RoomPane(BoxFace Wall, Rectangle Opening, Glazing Sheet);

/// <summary>What a pane is glazed with.</summary>
/// <param name="Transmittance">Share of the light that passes, 0 to 1, its bars included; its tint is reckoned apart, by the lamp's spectrum.</param>
/// <param name="Haze">Share of what passes that is scattered (ASTM D1003), taken as scattered evenly (Lambert), 0 to 1.</param>
/// <param name="Reflectance">Share thrown back into the room, 0 to 1 − transmittance.</param>
public sealed record Glazing(double Transmittance, double Haze, double Reflectance);
