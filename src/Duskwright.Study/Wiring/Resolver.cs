using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;

namespace Duskwright.Study.Wiring;

/// <summary>Fills in what a town does not say, and keeps to which ends it may lie.</summary>
internal static class Resolver
{
    // An unknown resistor lies between this and the least that keeps the lamp within its rating: it still lights, so it lives.
    private const double UnknownResistorMostOhms = 1000;

    internal static List<ResolvedLamp> Lamps(Town town, Building building)
    {
        var lamps = new List<ResolvedLamp>();
        var said = building.DescribedLamps().Select(l => l.Lamp.Name).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var taken = new HashSet<string>(StringComparer.Ordinal);
        for (var s = 0; s < building.Storeys.Count; s++)
        {
            for (var r = 0; r < building.Storeys[s].Rooms.Count; r++)
            {
                foreach (var lamp in building.Storeys[s].Rooms[r].Lamps)
                {
                    var name = FreeName(lamp.Name, lamps.Count + 1, said, taken);
                    lamps.Add(Lamp(town, building, lamp, name) with { Storey = s, Room = r, RoomName = building.Storeys[s].Rooms[r].Name ?? building.Storeys[s].Name });
                }
            }
        }

        if (lamps.Count == 0)
        {
            for (var i = 1; i <= (building.Leds ?? 0); i++)
            {
                lamps.Add(Lamp(town, building, new Lamp(), $"L{i}"));
            }
        }

        return lamps;
    }

    // Every lamp of a house is told by its name: the second of one name gets a number, and the program's own names keep clear of the maker's.
    private static string FreeName(string? said, int number, HashSet<string> allSaid, HashSet<string> taken)
    {
        if (said is not null && taken.Add(said))
        {
            return said;
        }

        var numbers = said is null ? Enumerable.Range(number, int.MaxValue - number).Select(n => $"L{n}") : Enumerable.Range(2, int.MaxValue - 2).Select(n => $"{said} {n}");
        return numbers.First(name => !allSaid.Contains(name) && taken.Add(name));
    }

    internal static ResolvedPair Pair(Town town, Building building)
    {
        var said = town.Routes.FirstOrDefault(r => r.Building == building.Key)?.Wire ?? building.Wire;
        var wire = Usual.WireOf(town, said);
        var unknown = said == PartId.Unknown;
        var (metres, origin) = PairMetres(town, building);
        var joints = Usual.JointsPerConductor * (town.Wiring.JointResistance?.Ohms ?? Usual.JointOhms);
        var (thin, thick) = unknown
            ? (Catalogue.FindWire(town, Usual.ThinWire)!.PerMetre.Ohms, Catalogue.FindWire(town, Usual.ThickWire)!.PerMetre.Ohms)
            : (wire.PerMetre.Ohms, wire.PerMetre.Ohms);
        return new ResolvedPair(
            building.Key,
            wire,
            unknown,
            metres,
            origin,
            new Span3((metres.Low * thin) + joints, (metres.Typical * wire.PerMetre.Ohms) + joints, (metres.High * thick) + joints));
    }

    /// <summary>The supply a switch group takes from; none where the group or its supply is not said.</summary>
    internal static Supply? SupplyOf(Town town, string? groupId) =>
        town.SwitchGroups.FirstOrDefault(g => g.Id == groupId)?.Supply is { } id ? town.Supplies.First(s => s.Id == id) : null;

    private static ResolvedLamp Lamp(Town town, Building building, Lamp lamp, string name)
    {
        var led = lamp.Led ?? building.Led;
        var part = Usual.LampOf(town, led);
        var group = lamp.SwitchGroup ?? building.SwitchGroup;
        var tailMetres = (building.TailLength ?? town.Wiring.TailLength)?.Metres ?? Usual.TailMetres;
        var tailWire = Catalogue.FindWire(town, town.Wiring.TailWire ?? Usual.TailWire)!;
        var (ohms, origin) = Resistor(town, lamp.Resistor ?? building.Resistor, part, group);
        return new ResolvedLamp(
            building.Key,
            name,
            null,
            null,
            null,
            part,
            led == PartId.Unknown,
            ohms,
            origin,
            2 * ((tailMetres * tailWire.PerMetre.Ohms) + (town.Wiring.JointResistance?.Ohms ?? Usual.JointOhms)),
            tailMetres,
            group,
            lamp.BehindPane?.Metres,
            lamp.Aim);
    }

    private static (Span3 Ohms, ResistorOrigin Origin) Resistor(Town town, ResistorChoice? said, LampPart part, string? group)
    {
        var (choice, origin) = (said, ResistorOrigin.Stated);
        if (choice is null && part.Kind == LampKind.Led && town.Wiring.Resistor is { } usual)
        {
            (choice, origin) = (usual, ResistorOrigin.Usual);
        }

        if (choice?.Value is { } value)
        {
            return (new Span3(value.Ohms * (1 + Usual.ResistorTolerance), value.Ohms, value.Ohms * (1 - Usual.ResistorTolerance)), origin);
        }

        if (choice is { IsNone: true })
        {
            return (Span3.Exactly(0), origin);
        }

        var volts = NominalVolts(town, group);
        var chosen = ResistorFor(part, volts, town.Wiring.LampCurrent?.Amperes ?? Usual.LampAmps);
        if (choice is { IsUnknown: true })
        {
            var least = ResistorFor(part, volts, part.MostCurrent?.Amperes ?? 0.02);
            var typical = town.Wiring.Resistor?.Value?.Ohms ?? chosen;
            return (new Span3(Math.Max(UnknownResistorMostOhms, typical), typical, Math.Min(least, typical)), ResistorOrigin.Unknown);
        }

        return (new Span3(chosen * (1 + Usual.ResistorTolerance), chosen, chosen * (1 - Usual.ResistorTolerance)), ResistorOrigin.Chosen);
    }

    /// <summary>The preferred resistor (E12, next up) that gives a lamp a current at a voltage; 0 where the lamp needs none or the voltage is too low.</summary>
    internal static double ResistorFor(LampPart part, double supplyVolts, double amps)
    {
        if (part.Kind is LampKind.ReadyWired or LampKind.Filament || (part.Kind == LampKind.Flickering && supplyVolts <= Usual.FlickerWithoutResistorVolts))
        {
            return 0;
        }

        var wished = part.Kind == LampKind.Flickering ? part.ReferenceCurrent.Amperes : amps;
        var exact = (supplyVolts - LampLaws.Lit(part).VoltsAt(wished)) / wished;
        return exact <= 0 ? 0 : PreferredValues.NextUp(PreferredValues.E12, Resistance.FromOhms(exact)).Ohms;
    }

    /// <summary>The nominal voltage of the supply a switch group takes from; of the usual pack where that is not said.</summary>
    internal static double NominalVolts(Town town, string? group) =>
        SupplyOf(town, group) is { } supply
            ? Catalogue.FindSupply(town, supply.Part)!.NominalVoltage.Volts * supply.Series
            : Catalogue.FindSupply(town, Usual.Cell)!.NominalVoltage.Volts * Usual.CellsInSeries;

    private static (Span3 Metres, LengthOrigin Origin) PairMetres(Town town, Building building)
    {
        if (building.PairLength is { } measured)
        {
            return (Span3.Exactly(measured.Metres), LengthOrigin.Measured);
        }

        var key = building.Key;
        if (town.Routes.FirstOrDefault(r => r.Building == key) is { } route)
        {
            return (Span3.Exactly(route.Length.Metres), LengthOrigin.Route);
        }

        var slack = PairAllowance.SlackMetres(town);
        var detour = PairAllowance.DetourFactor(town);
        if (building.Distance is { } distance)
        {
            // A rough distance is taken to a fifth either way.
            return (new Span3((distance.Metres * 1.2 * detour) + slack, (distance.Metres * detour) + slack, (distance.Metres * 0.8 * detour) + slack), LengthOrigin.Distance);
        }

        if (building.Place is { } place && town.Board?.Bank is { } bank)
        {
            var straight = Math.Sqrt(Math.Pow(place.At.X.Metres - bank.At.X.Metres, 2) + Math.Pow(place.At.Y.Metres - bank.At.Y.Metres, 2));
            return (new Span3((straight * Math.Max(detour, Math.Sqrt(2)) * 1.2) + slack, (straight * detour) + slack, straight + slack), LengthOrigin.Placed);
        }

        var known = town.Buildings.Where(b => b.Distance is not null).Select(b => b.Distance!.Value.Metres).Order().ToList();
        var (near, usual, far) = known.Count == 0
            ? (Usual.NearMetres, Usual.UnknownDistanceMetres, Usual.FarMetres)
            : (Math.Min(Usual.NearMetres, known[0]), known[known.Count / 2], known[^1]);
        return (new Span3((far * detour) + slack, (usual * detour) + slack, (near * detour) + slack), LengthOrigin.Unknown);
    }
}
