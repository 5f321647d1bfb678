using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>Supplies as results.</summary>
internal static class PackResults
{
    internal static ItemList<PackResult> Of(ResolvedTown resolved, CircuitResults circuits, Memo memo)
    {
        var supplies = resolved.Town.SwitchGroups.ToDictionary(g => g.Id, g => g.Supply, StringComparer.Ordinal);
        var fed = resolved.Buildings.SelectMany(b => b.Lamps.Select(l => (Building: b, Lamp: l)))
            .ToLookup(f => f.Lamp.SwitchGroup is { } group ? supplies.GetValueOrDefault(group) : null, StringComparer.Ordinal);
        return resolved.Town.Supplies.Select((s, i) => Pack(resolved, s, i + 1, [.. fed[s.Id]], circuits, memo)).ToItemList();
    }

    private static PackResult Pack(ResolvedTown resolved, Supply supply, int number, List<(ResolvedBuilding Building, ResolvedLamp Lamp)> fed, CircuitResults circuits, Memo memo)
    {
        var town = resolved.Town;
        var part = Catalogue.FindSupply(town, supply.Part)!;
        var groups = town.SwitchGroups.Where(g => g.Supply == supply.Id).Select(g => g.Id).ToItemList();
        var result = new PackResult
        {
            Supply = supply,
            Part = part,
            Words = SupplyWords.Of(supply, part),
            Number = number,
            SwitchGroups = groups,
            Buildings = fed.Select(f => f.Building.Building.Key).Distinct().ToItemList(),
            Lamps = fed.Count,
        };
        if (!circuits.Packs.TryGetValue(supply.Id, out var place))
        {
            return result;
        }

        var fade = place.Run.Fades[place.Index].Fade;
        var load = Load(place);
        return result with
        {
            Load = load,
            Volts = Volts(place, part, load),
            Fade = fade,
            HoursToDim = place.HoursTo(town.Show.DimShare, "hours to half light"),
            HoursToSpoiled = place.HoursTo(town.Show.SpoiledShare, "hours to a third, spoiled"),
            Carrying = memo.Get(CarryingOf(town, supply, part, fed), q => q.Answer()),
            ShortCircuit = memo.Get(ShortOf(resolved, supply, part, fed, place), q => q.Answer()),
        };
    }

    private static Figure Load(PackPlace place)
    {
        var run = place.Run;
        var lamps = Enumerable.Range(0, run.Circuit.Lamps.Count)
            .Where(i => run.Circuit.Lamps[i].Pack == place.Index)
            .Select(i => Figure.Given(
                $"{run.Circuit.Lamps[i].Input.Name} of {run.Circuit.Lamps[i].Building}", run.Fresh.ElementAmps[run.Circuit.Lamps[i].Element], "A", "computed with all switches on", Certainty.Computed))
            .ToArray();
        return Figure.From(Laws.Sum, "current with all switches on", "A", lamps).Between(place.Amps(place.Low), place.Amps(place.High));
    }

    private static Figure? Volts(PackPlace place, SupplyPart part, Figure load)
    {
        var pack = place.Run.Circuit.Packs[place.Index];
        var source = (Circuits.Networks.SourceElement)place.Run.Circuit.Network.Elements[pack.Source];
        return load.Value > source.LimitAmps
            ? Figure.Given("volts under load", place.Run.Fresh.NodeVolts[pack.Plus], "V", "more is drawn than the supply can give, so its volts give way", Certainty.Computed)
            : Figure.From(
                Laws.VoltsUnderLoad,
                "volts under load",
                "V",
                Figure.Given("open volts", source.OpenVolts, "V", part.Source, part.Certainty),
                load,
                Figure.Given("resistance of cells and holder", source.Ohms, "Ω", part.Source, part.Certainty));
    }

    private static CarryingQuery CarryingOf(Town town, Supply supply, SupplyPart part, List<(ResolvedBuilding Building, ResolvedLamp Lamp)> fed)
    {
        var commonest = fed.Select(f => f.Lamp).GroupBy(l => (l.Part.Id, l.ResistorOhms.Typical)).MaxBy(g => g.Count())!.First();
        var fuse = supply.Fuse is { } id ? Catalogue.FindFuse(town, id)!.LeastResistance.Ohms : 0;
        var holder = PackLaws.IsStore(part) ? Usual.HolderOhms : 0;
        return new CarryingQuery(
            part,
            supply.Series,
            supply.Parallel,
            supply.ChargeLeft,
            holder + Usual.SwitchOhms + fuse,
            commonest.Part,
            commonest.ResistorOhms.Typical + commonest.TailOhms,
            commonest.ResistorOhms.Typical > 0 ? $"{commonest.Part.Name}, {FigureText.Of(commonest.ResistorOhms.Typical, "Ω")}" : $"{commonest.Part.Name}, no resistor",
            town.Show.HoursPerDay.Hours,
            town.Show.HoursPerDay.Hours * town.Show.Days,
            town.Show.DimShare,
            town.Show.SpoiledShare,
            town.Show.VisibleStep);
    }

    private static ShortQuery ShortOf(ResolvedTown resolved, Supply supply, SupplyPart part, List<(ResolvedBuilding Building, ResolvedLamp Lamp)> fed, PackPlace place)
    {
        var town = resolved.Town;
        var pairs = fed.Select(f => f.Building.Pair).Distinct().ToList();
        var shared = fed.Select(f => f.Lamp.SwitchGroup!).Distinct().ToDictionary(g => g, g => SharedPairs.Of(resolved, g), StringComparer.Ordinal);
        var taps = town.Taps.Where(t => shared.ContainsKey(t.SwitchGroup)).Select(t => SharedPairs.WireOf(town, t));
        return new ShortQuery(
            part,
            supply.Series,
            supply.Parallel,
            supply.Fuse is { } id ? Catalogue.FindFuse(town, id) : null,
            place.Amps(place.Run),
            Usual.SwitchOhms,
            Usual.SwitchOhms + (2 * fed.Max(f => shared[f.Lamp.SwitchGroup!].PathOhms(f.Building.Pair))),
            pairs.Select(p => p.Wire).Concat(taps).Min(w => w.CopperDiameter.Metres),
            town.Show.RoomTemperatureC ?? Usual.RoomCelsius,
            Catalogue.Parts.Fuses);
    }
}
