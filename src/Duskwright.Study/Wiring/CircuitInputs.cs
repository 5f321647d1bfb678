using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Wiring;

/// <summary>Cuts a town into circuits: packs that share a return wire are one, else each pack is its own.</summary>
internal static class CircuitInputs
{
    internal static List<CircuitInput> Of(ResolvedTown resolved, Corner corner)
    {
        var town = resolved.Town;
        var onSwitch = resolved.Buildings
            .SelectMany(b => b.Lamps.Select(l => l.SwitchGroup).OfType<string>().Distinct(StringComparer.Ordinal).Select(g => (Group: g, Building: b)))
            .ToLookup(x => x.Group, x => x.Building, StringComparer.Ordinal);
        var packs = town.Supplies.Select(s => Pack(resolved, s, corner, onSwitch)).Where(p => p.Groups.Count > 0).ToList();
        var returnOhms = town.Wiring.ReturnWire is { } wire && town.Wiring.ReturnLength is { } length
            ? Catalogue.FindWire(town, wire)!.PerMetre.Ohms * length.Metres
            : 0;
        var hours = town.Show.HoursPerDay.Hours;
        var coarse = corner != Corner.Typical;
        return returnOhms > 0 && packs.Count > 0
            ? [new CircuitInput(packs.ToItemList(), returnOhms, hours, coarse)]
            : [.. packs.Select(p => new CircuitInput([p], 0, hours, coarse))];
    }

    private static PackInput Pack(ResolvedTown resolved, Supply supply, Corner corner, ILookup<string, ResolvedBuilding> onSwitch)
    {
        var town = resolved.Town;
        var fuse = supply.Fuse is { } id ? Catalogue.FindFuse(town, id)! : null;
        return new PackInput(
            supply.Id,
            Catalogue.FindSupply(town, supply.Part)!,
            supply.Series,
            supply.Parallel,
            supply.ChargeLeft,
            fuse is null ? 0 : corner == Corner.Low ? fuse.MostResistance.Ohms : fuse.LeastResistance.Ohms,
            town.SwitchGroups.Where(g => g.Supply == supply.Id).Select(g => Group(resolved, g.Id, corner, onSwitch)).Where(g => g.Pairs.Count > 0).ToItemList());
    }

    private static GroupInput Group(ResolvedTown resolved, string group, Corner corner, ILookup<string, ResolvedBuilding> onSwitch)
    {
        var shared = SharedPairs.Of(resolved, group);
        return new GroupInput(group, Usual.SwitchOhms, Pairs(resolved, group, shared, corner, onSwitch)) { Shared = shared.Inputs(corner) };
    }

    private static ItemList<PairInput> Pairs(ResolvedTown resolved, string group, SharedPairs shared, Corner corner, ILookup<string, ResolvedBuilding> onSwitch) =>
        onSwitch[group]
            .Select(b => new PairInput(
                b.Pair.Building,
                shared.OwnOhms(b.Pair, corner),
                b.Lamps
                    .Where(l => l.SwitchGroup == group)
                    .Select(l => new LampInput(l.Name, LampLaws.AtCorner(resolved.Town, l, corner), l.ResistorOhms.At(corner) + l.TailOhms))
                    .ToItemList())
            {
                Junction = shared.Junction(b.Pair.Building),
            })
            .ToItemList();
}
