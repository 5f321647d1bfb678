using Duskwright.Light.Perception;
using Duskwright.Light.Rooms;
using Duskwright.Light.Sight;
using Duskwright.Light.Surfaces;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>What is seen through panes, worked out from straight lines; rooms need not be solved again.</summary>
internal static class PaneSights
{
    // Wires and solder reach about this far from a lamp's middle, m; common practice, no source.
    private const double LampRadius = 0.002;

    internal static ItemList<PaneSight> Of(ResolvedTown resolved, CircuitResults circuits, IReadOnlyList<BuildingResult> buildings)
    {
        var eyes = new Eyes(resolved.Town);
        return resolved.Buildings.SelectMany((b, i) => OfBuilding(b, circuits, buildings[i], eyes)).ToItemList();
    }

    private static IEnumerable<PaneSight> OfBuilding(ResolvedBuilding resolved, CircuitResults circuits, BuildingResult result, Eyes eyes)
    {
        foreach (var room in PaneResults.Rooms(resolved, circuits))
        {
            var lit = room.Query.Room();
            var looks = lit.Panes.Select(p => eyes.Into(resolved.Building, room.Storey, room.Laid, lit.Box, p).ToList()).ToList();
            var all = lit.Panes.SelectMany((pane, p) => looks[p].Select(e => (pane, e.At))).ToList();
            for (var p = 0; p < lit.Panes.Length; p++)
            {
                var pane = result.Panes.First(x => x.Storey == room.Storey && x.Room == room.Room && x.Window == p);
                yield return Sight(resolved.Building, room, lit, p, looks[p], all, pane);
            }
        }
    }

    private static PaneSight Sight(
        Building building, PaneResults.LampRoom room, LitRoom lit, int index, List<(string Name, RoomPoint At)> eyes, List<(RoomPane Pane, RoomPoint Eye)> all, PaneResult result)
    {
        var sheet = lit.Panes[index].Sheet;
        var through = eyes.Count > 0 && BareLamp.SeenThrough(sheet.Haze);
        var coats = 0;
        while (BareLamp.SeenThrough(PaneSheets.Coated(sheet, coats).Haze))
        {
            coats++;
        }

        var wall = Figure.Given("inside of the room", room.Query.Reflectance, "", "share of the light it throws back; typical finishes, from memory or a lighting dictionary", Certainty.Typical);
        Figure Over(string name, string thing, double reflectance) =>
            Figure.From(Laws.Ratio, name, "", Figure.Given(thing, reflectance, "", "share of the light it throws back, from memory", Certainty.Typical), wall);
        return new PaneSight
        {
            Building = building.Key,
            Storey = room.Storey,
            Room = room.Room,
            Window = index,
            From = eyes.Select(e => e.Name).ToItemList(),
            SeenThrough = through,
            Open = room.Query.Panes[index].Pane?.Material == PaneMaterial.Open,
            Lamps = room.Lamps.Select((_, l) => Lamp(room, lit, index, l, eyes, all, result, through)).OfType<LampSight>().ToItemList(),
            MetalOverWall = through ? Over("bare solder over the wall behind", "bare solder and leads", Finishes.Solder) : null,
            EdgeOverWall = through ? Over("a raw card edge over the wall behind", "raw card", Finishes.Raw) : null,
            CoatsToClose = through ? coats : 0,
            LightAfterCoats = Figure.Given(
                "light left after frosting", through ? PaneSheets.Coated(sheet, coats).Transmittance / sheet.Transmittance : 1, "share", "each coat passes 0.91 of it: clear sheet 0.90, frosted on both faces 0.75, from memory", Certainty.Typical),
        };
    }

    private static LampSight? Lamp(
        PaneResults.LampRoom room, LitRoom lit, int index, int lamp, List<(string Name, RoomPoint At)> eyes, List<(RoomPane Pane, RoomPoint Eye)> all, PaneResult result, bool through)
    {
        var (pane, spot, light) = (lit.Panes[index], lit.Lamps[lamp], room.Lamps[lamp]);
        var seeing = eyes.Where(e => SightLine.Passes(lit.Box, pane, e.At, spot.At, LampRadius)).ToList();
        if (seeing.Count == 0)
        {
            return null;
        }

        var candelas = light.Candelas.Value * seeing.Max(e => spot.Lobe.CandelasAt(Cosine(spot.Axis, e.At - spot.At)));
        var face = BareLampSight.Luminance(candelas, FaceOf(light.Part), pane.Sheet) * PaneResults.Passing(light, room.Query.Panes[index].Pane);
        var glares = face > BareLampSight.DotRatio * result.Luminance.Value;
        if (!glares && !through)
        {
            return null;
        }

        return new LampSight(
            light.Name,
            seeing.Select(e => e.Name).ToItemList(),
            glares ? Figure.From(Laws.Ratio, $"{light.Name} itself over its pane", "", Figure.Given($"face of {light.Name} through the pane", face, "cd/m²", "its intensity towards the eye over the area of its body; the part of it that passes unscattered", Certainty.Typical), result.Luminance) : null,
            HidingPlace.Nearest(lit.Box, spot.At, LampRadius, all) is { } move ? Words(move) : null,
            glares ? BareLampSight.CoatsToHide(pane.Sheet, face / result.Luminance.Value) : null);
    }

    private static double Cosine(RoomPoint axis, RoomPoint ray) => axis.Dot(ray) / Math.Sqrt(axis.Dot(axis) * ray.Dot(ray));

    // Chips by their code in hundredths of an inch, round bodies by their diameter; grain bulbs and what is not said as 3 mm.
    private static double FaceOf(LampPart part) => part.Body switch
    {
        { } body when body.StartsWith("0402", StringComparison.Ordinal) => 1.0e-3 * 0.5e-3,
        { } body when body.StartsWith("0603", StringComparison.Ordinal) => 1.6e-3 * 0.8e-3,
        { } body when body.StartsWith("0805", StringComparison.Ordinal) => 2.0e-3 * 1.25e-3,
        { } body when body.StartsWith("1206", StringComparison.Ordinal) => 3.2e-3 * 1.6e-3,
        { } body when body.StartsWith("5 mm", StringComparison.Ordinal) => Math.PI / 4 * 5e-3 * 5e-3,
        _ => Math.PI / 4 * 3e-3 * 3e-3,
    };

    private static LampMove Words(RoomPoint move)
    {
        var (metres, way) = move switch
        {
            { Z: > 0 } => (move.Z, "up"),
            { Z: < 0 } => (-move.Z, "down"),
            { X: > 0 } => (move.X, "to the right, seen from the front"),
            { X: < 0 } => (-move.X, "to the left, seen from the front"),
            { Y: > 0 } => (move.Y, "to the back"),
            _ => (-move.Y, "to the front"),
        };
        return new((int)Math.Round(1000 * metres), way);
    }
}
