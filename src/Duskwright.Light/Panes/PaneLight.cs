using System.Collections.Immutable;
using Duskwright.Light.Lamps;

namespace Duskwright.Light.Panes;

/// <summary>What a pane looks like from outside, from the lamps in the room behind it. First version.</summary>
/// <remarks>
/// The light that has been thrown about the room is taken as even (cavity formula E = Φρ/(A(1 − ρ)), as of an integrating sphere);
/// a lamp that points at the pane adds its direct light by the inverse square at the pane's middle, capped by its lumens over the pane.
/// Corners, shadows and the room's shape are left out; a pane near the lamp is brighter in its middle than said.
/// </remarks>
public static class PaneLight
{
    // A clear pane this bright where the lamp stands, against the rest of it, shows the lamp as a dot (focal ratio "meaningful", PE-06).
    private const double DotRatio = 10;

    // Nearer than this a frosted pane shows the lamp as a spot: common practice keeps 15 to 25 mm.
    private const double DotMetres = 0.015;

    /// <summary>Works out one pane.</summary>
    /// <param name="room">The room.</param>
    /// <param name="lamps">Its lamps at their actual current.</param>
    /// <param name="pane">The pane.</param>
    /// <returns>What it looks like.</returns>
    public static PaneLook Of(RoomBox room, ImmutableArray<LampInRoom> lamps, PaneSheet pane)
    {
        var area = 2 * ((room.WidthMetres * room.DepthMetres) + (room.WidthMetres * room.HeightMetres) + (room.DepthMetres * room.HeightMetres));
        var paneArea = pane.WidthMetres * pane.HeightMetres;
        var (even, direct, dot) = (0.0, 0.0, false);
        foreach (var lamp in lamps)
        {
            even += lamp.Lobe.Lumens * room.Reflectance / (area * (1 - room.Reflectance));
            if (lamp.AtPane)
            {
                direct += Math.Min(lamp.Lobe.AxisCandelas / (lamp.BehindPaneMetres * lamp.BehindPaneMetres), lamp.Lobe.Lumens / paneArea);
                dot |= pane.Haze < 1 && (lamp.BehindPaneMetres < DotMetres || pane.Haze < 0.5);
            }
        }

        // Seen through, the far wall sends E·ρ/π; scattered, the pane itself sends E·τ/π.
        var seenThrough = pane.Transmittance * (1 - pane.Haze) * even * room.Reflectance / Math.PI;
        var scattered = pane.Transmittance * pane.Haze * (even + direct) / Math.PI;
        var mean = seenThrough + scattered;
        var hotSpot = mean > 0 ? 1 + (pane.Transmittance * pane.Haze * direct / Math.PI / mean) : 1;
        return new PaneLook(mean, hotSpot, dot || hotSpot > DotRatio);
    }
}

/// <summary>A room as a closed box.</summary>
/// <param name="WidthMetres">Inside width, m.</param>
/// <param name="DepthMetres">Inside depth, m.</param>
/// <param name="HeightMetres">Inside height, m.</param>
/// <param name="Reflectance">Mean reflectance of its inside, 0 to less than 1.</param>
public sealed record RoomBox(double WidthMetres, double DepthMetres, double HeightMetres, double Reflectance);

/// <summary>A lamp in a room.</summary>
/// <param name="Lobe">Its light at its actual current.</param>
/// <param name="BehindPaneMetres">How far behind the pane it sits, m.</param>
/// <param name="AtPane">Whether it points at the pane.</param>
public sealed record LampInRoom(LampLobe Lobe, double BehindPaneMetres, bool AtPane);

/// <summary>A pane.</summary>
/// <param name="WidthMetres">Width, m.</param>
/// <param name="HeightMetres">Height, m.</param>
/// <param name="Transmittance">Share of the light that passes, its tint and bars included.</param>
/// <param name="Haze">Share of that which is scattered (ASTM D1003).</param>
public sealed record PaneSheet(double WidthMetres, double HeightMetres, double Transmittance, double Haze);

/// <summary>What a pane looks like.</summary>
/// <param name="MeanLuminance">Mean luminance seen from outside, cd/m².</param>
/// <param name="HotSpotRatio">Brightest place over the mean, 1 for an even pane.</param>
/// <param name="DotShows">Whether the bare lamp shows as a dot.</param>
public sealed record PaneLook(double MeanLuminance, double HotSpotRatio, bool DotShows);
