using Duskwright.Light.Colour;
using Duskwright.Light.Rooms;
using Duskwright.Light.Surfaces;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>Panes as results: each room solved once for one candela of each lamp, then weighed by the lamps' light.</summary>
internal static class PaneResults
{
    /// <summary>Every room with a window and a lamp that shines.</summary>
    internal static IEnumerable<PaneQuery> Queries(ResolvedTown resolved, CircuitResults circuits) =>
        resolved.Buildings.SelectMany(b => Rooms(b, circuits)).Select(room => room.Query);

    /// <summary>The panes of a building as they would be with all its rooms finished alike inside.</summary>
    internal static ItemList<PaneResult> As(InteriorFinish finish, ResolvedBuilding resolved, CircuitResults circuits, Memo memo) =>
        Rooms(resolved, circuits)
            .Select(room => room with { Laid = room.Laid with { Query = room.Query with { Finish = finish } } })
            .SelectMany(room => Panes(resolved.Building, room, memo.Get(room.Query, q => q.Answer())))
            .ToItemList();

    internal static Later<ItemList<PaneResult>> Of(ResolvedBuilding resolved, CircuitResults circuits, Memo memo) =>
        new(() => Rooms(resolved, circuits).SelectMany(room => Panes(resolved.Building, room, memo.Get(room.Query, q => q.Answer()))).ToItemList());

    internal static IEnumerable<LampRoom> Rooms(ResolvedBuilding resolved, CircuitResults circuits)
    {
        var building = resolved.Building;
        for (var s = 0; s < building.Storeys.Count; s++)
        {
            for (var r = 0; r < building.Storeys[s].Rooms.Count; r++)
            {
                var lamps = resolved.Lamps.Where(l => l.Storey == s && l.Room == r)
                    .Select((lamp, number) => (Lamp: lamp, Number: number))
                    .Where(l => l.Lamp.Part.Intensity is not null && circuits.Lamps.ContainsKey((l.Lamp.Building, l.Lamp.Name)))
                    .ToList();
                var laid = lamps.Count == 0 ? null : RoomLayout.Of(building, building.Storeys[s], r, [.. lamps.Select(l => (l.Number, l.Lamp.Part.ViewingAngle?.Radians ?? Math.PI / 3))]);
                if (laid is not null)
                {
                    yield return new LampRoom(s, r, laid, [.. lamps.Select(l => Light(l.Lamp, circuits))]);
                }
            }
        }
    }

    private static RoomLampLight Light(ResolvedLamp lamp, CircuitResults circuits)
    {
        var place = circuits.Lamps[(lamp.Building, lamp.Name)];
        var circuitLamp = place.Run.Circuit.Lamps[place.Index];
        var point = circuitLamp.Law.At(place.Run.BranchVolts(place.Index), circuitLamp.Input.BranchOhms);
        var filament = lamp.Part.Kind == LampKind.Filament;
        var stated = lamp.Part.IntensityCurrent?.Amperes ?? lamp.Part.ReferenceCurrent.Amperes;
        var candelas = lamp.Part.Intensity!.Value.Candelas * point.Light * (filament ? 1 : lamp.Part.ReferenceCurrent.Amperes / stated);
        var share = point.LampVolts / lamp.Part.ReferenceVoltage.Volts;
        return new RoomLampLight(
            lamp.Name,
            lamp.Part,
            Figure.Given($"{lamp.Name} along its axis at its current", candelas, "cd", lamp.Part.Source, lamp.Part.Certainty),
            filament && share > 0 ? LampSpectra.OfFilament(share) : LampSpectra.OfLed(lamp.Part.Colour));
    }

    private static IEnumerable<PaneResult> Panes(Building building, LampRoom room, RoomTransfer transfer)
    {
        for (var pane = 0; pane < transfer.Panes.Length; pane++)
        {
            var described = room.Query.Panes[pane].Pane;
            var tint = Tint(described);
            var passing = room.Lamps.Select(l => Passing(l, described)).ToList();
            var each = Enumerable.Range(0, room.Lamps.Count)
                .Select(l => PaneLook.Of(transfer, pane, [.. passing.Select((p, i) => i == l ? p : 0)]).Mean)
                .ToList();
            var source = Words(building, room.Query, transfer.Room.Panes[pane].Sheet);
            var luminance = Figure.From(Laws.PaneLuminance, "brightness of the pane", "cd/m²", [.. room.Lamps.SelectMany((l, i) => new[]
            {
                l.Candelas,
                Figure.Given($"what the room and the pane make of one candela of {l.Name}", each[i], "cd/m² per cd", tint is null ? source : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{source}; its tint passes {passing[i]:0.00} of this lamp's light"), Certainty.Typical),
            })]);
            var look = PaneLook.Of(transfer, pane, [.. passing.Select((p, i) => p * room.Lamps[i].Candelas.Value)]);
            var light = room.Lamps
                .Select((l, i) => each[i] * l.Candelas.Value * (tint is null ? l.Spectrum : l.Spectrum.Through(tint)).Tristimulus())
                .Aggregate((one, other) => one + other);
            var colour = light.Y > 0 ? Srgb.Brightest(light) : (Srgb?)null;
            yield return new PaneResult
            {
                Building = building.Key,
                Storey = room.Storey,
                Room = room.Room,
                Window = pane,
                Luminance = luminance,
                ReadsAsLitTo = Figure.From(Laws.RoomLightLimit, "reads as lit up to", "lx", luminance),
                Colour = colour?.Hex,
                ColourOutsideScreen = colour?.Outside ?? false,
                Chromaticity = light.Y > 0 ? light.Chromaticity : null,
                ColourKelvin = light.Y > 0 ? light.Chromaticity.ColourTemperature()?.Kelvin : null,
                HotSpotRatio = look.HotSpotRatio,
                MapColumns = look.Grid.Columns,
                Map = look.Luminance.Select(l => look.Mean > 0 ? l / look.Mean : 1).ToItemList(),
                Moved = room.Laid.Moved,
                Lamps = room.Lamps.Select((l, i) => new PaneLampShare(l.Name, each[i] * l.Candelas.Value)).ToItemList(),
            };
        }
    }

    /// <summary>Share of a lamp's light that passes a pane's tint.</summary>
    internal static double Passing(RoomLampLight lamp, Pane? pane) => Tint(pane) is { } tint ? lamp.Spectrum.SharePassing(tint) : 1;

    private static Spectrum? Tint(Pane? pane) => pane?.Tint switch
    {
        PaneTint.Amber => PaneSheets.Amber,
        PaneTint.Red => PaneSheets.Red,
        PaneTint.Green => PaneSheets.Green,
        PaneTint.Blue => PaneSheets.Blue,
        _ => null,
    };

    private static string Words(Building building, PaneQuery room, Glazing sheet)
    {
        string Millimetres(double metres) => (1000 * metres).ToString("0", System.Globalization.CultureInfo.InvariantCulture);
        string Share(double share) => share.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture);
        var round = building.Place is { Round: true } ? "a round building approximated as a box of " : "";
        return $"{round}{Millimetres(room.WidthMetres)} × {Millimetres(room.DepthMetres)} × {Millimetres(room.HeightMetres)} mm whose inside throws back {Share(room.Reflectance)}; "
            + $"the pane passes {Share(sheet.Transmittance)} and scatters {Share(sheet.Haze)} of that; straight light by the inverse square, the rest thrown to and fro between patches (radiosity); typical finishes, from memory or a lighting dictionary";
    }

    /// <summary>A room with lamps that shine.</summary>
    internal sealed record LampRoom(int Storey, int Room, LaidRoom Laid, IReadOnlyList<RoomLampLight> Lamps)
    {
        internal PaneQuery Query => Laid.Query;
    }

    internal sealed record RoomLampLight(string Name, LampPart Part, Figure Candelas, Spectrum Spectrum);
}
