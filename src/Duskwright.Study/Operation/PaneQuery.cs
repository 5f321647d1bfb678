using System.Collections.Immutable;
using Duskwright.Light.Lamps;
using Duskwright.Light.Panes;
using Duskwright.Light.Surfaces;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Operation;

/// <summary>What the look of a room's brightest pane is computed from.</summary>
internal sealed record PaneQuery(
    double WidthMetres, double DepthMetres, double HeightMetres, InteriorFinish Finish, Window Window, ItemList<PaneLamp> Lamps)
{
    // Where a room's size is not said: a small room, 40 × 40 × 35 mm inside.
    private const double UsualSide = 0.04;
    private const double UsualHeight = 0.035;
    private const double UsualBehindPane = 0.02;

    internal static PaneQuery? Of(Building building, Storey storey, Room room, IEnumerable<PaneLamp> lamps)
    {
        var window = room.Windows.MaxBy(w => Glass(w).Transmittance * w.Width.Metres * w.Height.Metres);
        return window is null
            ? null
            : new PaneQuery(
                (room.Width ?? building.Place?.Width)?.Metres ?? UsualSide,
                (room.Depth ?? building.Place?.Depth ?? building.Place?.Width)?.Metres ?? UsualSide,
                storey.Height?.Metres ?? UsualHeight,
                room.Finish ?? building.Finish ?? InteriorFinish.Raw,
                window,
                lamps.ToItemList());
    }

    internal PaneAnswer Answer()
    {
        var reflectance = Finish switch
        {
            InteriorFinish.Black => Finishes.Black,
            InteriorFinish.White => Finishes.White,
            InteriorFinish.Foil => Finishes.Foil,
            _ => Finishes.Raw,
        };
        var (transmittance, haze) = Glass(Window);
        var lamps = Lamps.Select(l => new LampInRoom(new LampLobe(l.Candelas, l.AngleRadians), l.BehindPaneMetres ?? UsualBehindPane, l.Aim == LampAim.AtPane)).ToImmutableArray();
        var look = PaneLight.Of(
            new RoomBox(WidthMetres, DepthMetres, HeightMetres, reflectance), lamps, new PaneSheet(Window.Width.Metres, Window.Height.Metres, transmittance, haze));
        var lumens = lamps.Sum(l => l.Lobe.Lumens);
        var area = 2 * ((WidthMetres * DepthMetres) + (WidthMetres * HeightMetres) + (DepthMetres * HeightMetres));
        var even = lumens * reflectance / (area * (1 - reflectance));
        var direct = haze > 0 ? Math.Max(0, (look.MeanLuminance * Math.PI / (transmittance * haze)) - even - ((1 - haze) * even * reflectance / haze)) : 0;
        Figure Given(string name, double value, string unit, string source) => Figure.Given(name, value, unit, source, Certainty.Typical);
        var luminance = Figure.From(
            Laws.PaneLuminance,
            "brightness of the pane",
            "cd/m²",
            Given("light of the room's lamps at their current", lumens, "lm", "intensity and viewing angle of the parts, light in step with current"),
            Given("inside of the room", area, "m²", "as described"),
            Given("share its walls throw back", reflectance, "share", "finish of the room; typical, from memory or a lighting dictionary"),
            Given("share the pane passes", transmittance, "share", "material, tint and bars of the pane; typical, from memory"),
            Given("share of that it scatters", haze, "share", "material of the pane; typical, from memory"),
            Given("direct light on the pane", direct, "lx", "inverse square of lamps that point at it"));
        return new PaneAnswer(luminance, look.DotShows);
    }

    private static (double Transmittance, double Haze) Glass(Window window)
    {
        var (transmittance, haze) = window.Pane?.Material switch
        {
            PaneMaterial.Frosted => PaneSheets.Frosted,
            PaneMaterial.Tracing => PaneSheets.Tracing,
            PaneMaterial.Open => PaneSheets.Open,
            _ => PaneSheets.Clear,
        };
        var tint = window.Pane is { Tint: not PaneTint.None } ? PaneSheets.TintShare : 1;
        return (transmittance * tint * (window.Pane is { Bars: true } ? PaneSheets.BarsShare : 1), haze);
    }
}

/// <summary>A lamp as its room's pane sees it.</summary>
internal sealed record PaneLamp(double Candelas, double AngleRadians, double? BehindPaneMetres, LampAim Aim);

/// <summary>The look of a room's brightest pane.</summary>
internal sealed record PaneAnswer(Figure Luminance, bool DotShows);
