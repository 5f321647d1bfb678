using Duskwright.Circuits.Lamps;
using Duskwright.Light.Flicker;
using Duskwright.Light.Rooms;
using Duskwright.Light.Sight;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>What of the view flickers from one place people look from.</summary>
public sealed record FlickerResult
{
    // How often the driver of a flickering lamp changes state: common practice, no source.
    internal const double TypicalHertz = 12;
    private const double LeastHertz = 5;
    private const double MostHertz = 25;

    /// <summary>The place.</summary>
    public required string From { get; init; }

    /// <summary>Panes in view with a flickering lamp behind them.</summary>
    public required int Panes { get; init; }

    /// <summary>Their area as the eye sees it, sr, all counted as if they lay within 10° and flashed together: at most what WCAG counts.</summary>
    public required Figure Area { get; init; }

    /// <summary>Modulation of the deepest of them, as a share.</summary>
    public required Figure Modulation { get; init; }

    /// <summary>Changes a second.</summary>
    public required Figure Rate { get; init; }

    /// <summary>Whether it is above the low-risk limit of IEEE 1789 for general lighting; decorative flicker always is.</summary>
    public required bool AboveGeneralLimit { get; init; }

    /// <summary>Whether it is small enough, or slow enough, for the general flash limit of WCAG.</summary>
    public required bool WithinFlashLimit { get; init; }

    internal static ItemList<FlickerResult> Of(ResolvedTown resolved, CircuitResults circuits, IReadOnlyList<BuildingResult> buildings)
    {
        var eyes = new Eyes(resolved.Town);
        var seen = new List<(string From, double Steradians, double Dark, double Lit)>();
        for (var b = 0; b < resolved.Buildings.Count; b++)
        {
            foreach (var room in PaneResults.Rooms(resolved.Buildings[b], circuits).Where(r => r.Lamps.Any(l => l.Part.Kind == LampKind.Flickering)))
            {
                var lit = room.Query.Room();
                for (var p = 0; p < lit.Panes.Length; p++)
                {
                    var result = buildings[b].Panes.First(x => x.Storey == room.Storey && x.Room == room.Room && x.Window == p);
                    var (dark, most) = States(room, result);
                    seen.AddRange(eyes.Into(resolved.Buildings[b].Building, room.Storey, room.Laid, lit.Box, lit.Panes[p])
                        .Select(e => (e.Name, Steradians(lit, p, e.At), dark, most)));
                }
            }
        }

        return seen.GroupBy(s => s.From).Select(g => Place(g.Key, [.. g])).ToItemList();
    }

    private static FlickerResult Place(string from, List<(string From, double Steradians, double Dark, double Lit)> panes)
    {
        var area = Figure.Given("flickering area in view", panes.Sum(p => p.Steradians), "sr", "each pane's area × cosine ÷ distance², all counted together", Certainty.Computed);
        var deepest = panes.MaxBy(p => (p.Lit - p.Dark) / (p.Lit + p.Dark));
        var modulation = Figure.From(
            Laws.Modulation,
            "modulation",
            "share",
            Figure.Given("pane with its flickering lamps lit", deepest.Lit, "cd/m²", "states solved one by one", Certainty.Computed),
            Figure.Given("pane with them dark", deepest.Dark, "cd/m²", "states solved one by one", Certainty.Computed));
        return new FlickerResult
        {
            From = from,
            Panes = panes.Count,
            Area = area,
            Modulation = modulation,
            Rate = Figure.Given("changes a second", TypicalHertz, "Hz", "of usual flickering LEDs, irregular; common practice, no source", Certainty.Typical).Between(LeastHertz, MostHertz),
            AboveGeneralLimit = FlickerLimits.Of(MostHertz, 100 * modulation.Value) == FlickerRisk.AboveLow,
            WithinFlashLimit = FlashLimits.Within(area.Value, MostHertz),
        };
    }

    // A pane's results count mean light: lit for its share of the time, a flickering lamp is brighter by that share; dark it gives nothing.
    private static (double Dark, double Lit) States(PaneResults.LampRoom room, PaneResult pane)
    {
        var (dark, lit) = (0.0, 0.0);
        foreach (var (lamp, share) in room.Lamps.Zip(pane.Lamps))
        {
            var flickers = lamp.Part.Kind == LampKind.Flickering;
            dark += flickers ? 0 : share.Luminance;
            lit += flickers ? share.Luminance / ((FlickerLaw)LampLaws.Of(lamp.Part)).OnShare : share.Luminance;
        }

        return (dark, lit);
    }

    private static double Steradians(LitRoom room, int pane, RoomPoint eye)
    {
        var ray = eye - SightLine.Middle(room.Box, room.Panes[pane]);
        var square = ray.Dot(ray);
        var before = room.Panes[pane].Wall is BoxFace.Left or BoxFace.Right ? ray.X : ray.Y;
        return FlashLimits.Steradians(room.Panes[pane].Opening.Area, Math.Sqrt(square), Math.Abs(before) / Math.Sqrt(square));
    }
}
