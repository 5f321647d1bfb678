using System.Collections.Immutable;

namespace Duskwright.Light.Rooms;

/// <summary>A pane as it looks from outside, square on; the bare lamp itself, should it be in sight, is not part of it.</summary>
/// <param name="Grid">How the map is divided.</param>
/// <param name="Luminance">Luminance of each part, cd/m².</param>
public sealed record PaneLook(PaneGrid Grid, ImmutableArray<double> Luminance)
{
    /// <summary>Mean luminance, cd/m².</summary>
    public double Mean => Grid.Mean(Luminance);

    /// <summary>The brightest part over the mean; 1 for an even or dark pane.</summary>
    public double HotSpotRatio => Mean > 0 ? Luminance.Max() / Mean : 1;

    /// <summary>
    /// Looks at a pane: L = τ·(h·E/π + (1 − h)·L of what lies behind), over the lamps of the room.
    /// </summary>
    /// <param name="transfer">The room solved.</param>
    /// <param name="pane">Which of its panes.</param>
    /// <param name="shares">Light of each lamp over that it was solved with, its passage through the pane's tint included; zero or more.</param>
    /// <returns>The pane.</returns>
    public static PaneLook Of(RoomTransfer transfer, int pane, IReadOnlyList<double> shares)
    {
        ArgumentNullException.ThrowIfNull(transfer);
        ArgumentNullException.ThrowIfNull(shares);
        var sheet = transfer.Room.Panes[pane].Sheet;
        var grid = transfer.Panes[pane];
        var luminance = new double[grid.Areas.Length];
        for (var lamp = 0; lamp < transfer.Lamps.Length; lamp++)
        {
            var reach = transfer.Lamps[lamp].Panes[pane];
            for (var part = 0; part < luminance.Length; part++)
            {
                luminance[part] += shares[lamp] * sheet.Transmittance * ((sheet.Haze * reach.Lux[part] / Math.PI) + ((1 - sheet.Haze) * reach.BehindLuminance[part]));
            }
        }

        return new PaneLook(grid, [.. luminance]);
    }
}
