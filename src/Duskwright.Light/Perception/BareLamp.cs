namespace Duskwright.Light.Perception;

/// <summary>Whether the bare lamp shows as a dot through a pane it points at.</summary>
public static class BareLamp
{
    // A place this much brighter than the rest draws the eye (focal ratio "meaningful", university table of luminous contrast).
    private const double DotRatio = 10;

    // Nearer than this a frosted pane shows the lamp as a spot: common practice keeps 15 to 25 mm.
    private const double DotMetres = 0.015;

    // A sheet of less haze counts as one that is seen through: ASTM D1003 puts the bound for diffusing sheets at 0.30; half leaves most of the light unscattered.
    private const double SeenThroughHaze = 0.5;

    /// <summary>Whether one sees through a sheet into the room.</summary>
    /// <param name="haze">Its haze, 0 to 1.</param>
    /// <returns>True below a half.</returns>
    public static bool SeenThrough(double haze) => haze < SeenThroughHaze;

    /// <summary>Whether it shows.</summary>
    /// <param name="haze">Haze of the pane, 0 to 1.</param>
    /// <param name="behindPaneMetres">How far behind the pane the lamp sits, m.</param>
    /// <param name="hotSpotRatio">The pane's brightest part over its mean.</param>
    /// <returns>True where it does.</returns>
    public static bool ShowsAsDot(double haze, double behindPaneMetres, double hotSpotRatio) =>
        hotSpotRatio > DotRatio || (haze < 1 && (behindPaneMetres < DotMetres || SeenThrough(haze)));
}
