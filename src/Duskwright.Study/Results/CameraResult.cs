using Duskwright.Light.Camera;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>How to photograph the town: what its windows and facades need, and how much light in the room brings them into one picture.</summary>
public sealed record CameraResult
{
    // A picture holds detail from two stops above its middle tone to three below: usual for cameras that keep raw data, from memory.
    private const double StopsAbove = 2;
    private const double StopsHeld = 5;

    // Light in the room where nothing is said, as of a dimmed hall; common practice, no source.
    private const double UsualRoomLux = 30;

    private static readonly double[] Isos = [200, 800, 3200];
    private static readonly double[] FNumbers = [2.8, 5.6, 11];

    /// <summary>The middle pane's luminance, cd/m².</summary>
    public required Figure Windows { get; init; }

    /// <summary>Luminance of the facades in the room's light, cd/m².</summary>
    public required Figure Facade { get; init; }

    /// <summary>Stops from facades to windows.</summary>
    public required Figure Apart { get; init; }

    /// <summary>Light in the room from which one picture holds windows and facades, lx.</summary>
    public required Figure RoomLuxForPair { get; init; }

    /// <summary>How much more than the show's light that is, lx; 0 where it is enough already.</summary>
    public required double LuxToAdd { get; init; }

    /// <summary>Settings.</summary>
    public required ItemList<CameraShot> Shots { get; init; }

    internal static CameraResult? Of(TownStudy study)
    {
        var lit = study.Panes.Where(p => p.Luminance.Value > 0).OrderBy(p => p.Luminance.Value).ToList();
        if (lit.Count == 0)
        {
            return null;
        }

        var windows = lit[lit.Count / 2].Luminance;
        var room = study.Town.Show.RoomIlluminance is { Lux: > 0 } said
            ? Figure.Given("light in the room", said.Lux, "lx", "as said of the show", Certainty.Assumed)
            : Figure.Given("light in the room", UsualRoomLux, "lx", "not said; a dimmed hall, common practice, no source", Certainty.Assumed);
        var facade = Figure.From(Laws.Facade, "facades in the room's light", "cd/m²", room);
        var held = Figure.Given("stops a picture holds", StopsHeld, "", "two above its middle tone, three below; usual for raw data, from memory", Certainty.Typical);
        var pair = Figure.From(Laws.RoomLightForPair, "room light for windows and facades in one picture", "lx", windows, held);
        return new CameraResult
        {
            Windows = windows,
            Facade = facade,
            Apart = Figure.From(Laws.Stops, "windows above facades", "stops", windows, facade),
            RoomLuxForPair = pair,
            LuxToAdd = Math.Max(0, pair.Value - room.Value),
            Shots = Isos.SelectMany(iso => FNumbers.Select(f => Shot(iso, f, windows, facade))).ToItemList(),
        };
    }

    private static CameraShot Shot(double iso, double fNumber, Figure windows, Figure facade)
    {
        Figure Seconds(string name, Figure luminance, double stops) => Figure.From(
            Laws.Shutter,
            name,
            "s",
            luminance,
            Figure.Given("sensitivity", iso, "", "as set", Certainty.Assumed),
            Figure.Given("f-number", fNumber, "", "as set", Certainty.Assumed),
            Figure.Given("stops above the middle tone", stops, "", "as wished", Certainty.Assumed));
        var pair = Seconds("shutter for both", windows, StopsAbove);
        return new CameraShot(
            iso,
            fNumber,
            Seconds("shutter for the windows", windows, 0),
            Seconds("shutter for the facades", facade, 0),
            pair,
            Banding.Depth(100, 0.5, pair.Value),
            Banding.Depth(120, 0.5, pair.Value));
    }
}

/// <summary>One setting of a camera.</summary>
/// <param name="Iso">Sensitivity, ISO.</param>
/// <param name="FNumber">f-number.</param>
/// <param name="Windows">Shutter time that shows the windows as a middle tone, s.</param>
/// <param name="Facade">Shutter time that shows the facades so, s.</param>
/// <param name="Pair">Shutter time that sets the windows two stops above it, so that the facades come up, s.</param>
/// <param name="Bands50">Depth of bands at that time under a hall light that goes fully on and off with mains of 50 Hz, 0 to 1; town lamps on cells make none.</param>
/// <param name="Bands60">The same with mains of 60 Hz.</param>
public sealed record CameraShot(double Iso, double FNumber, Figure Windows, Figure Facade, Figure Pair, double Bands50, double Bands60);
