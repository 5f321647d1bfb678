using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Sums;

namespace Duskwright.Proposals.Sharing;

/// <summary>What of a town is shared over its packs.</summary>
internal static class SharedUnits
{
    /// <summary>Whether scenes, single lamps or shared pairs that are laid name the switches, which must then stay what they are.</summary>
    internal static bool MustKeepSwitches(Town town)
    {
        var held = SharedRuns.Held(town);
        return town.SwitchGroups.Count > 0
            && (town.Scenes.Count > 0 || town.Buildings.Any(b => b.DescribedLamps().Any(l => l.Lamp.SwitchGroup is not null)) || SharedRuns.Starts(town).Any(s => held.Contains(s.Key)));
    }

    /// <summary>Every house by itself.</summary>
    /// <param name="town">The town.</param>
    /// <param name="wired">The town with every house on a pack, for its currents.</param>
    internal static List<SharedUnit> Houses(Town town, Town wired)
    {
        var supplyOf = SupplyOfSwitch(town);
        var own = town.Buildings.ToDictionary(b => b.Key, StringComparer.Ordinal);
        return [.. PackCapacity.Loads(wired).Select(b => House(b, own[b.Building.Key], supplyOf))];
    }

    /// <summary>Every switch with all that hangs on it, and every house that hangs on none.</summary>
    /// <returns>The units, or why there are none: what is to stay on two packs hangs on one switch.</returns>
    internal static (List<SharedUnit> Units, string? Torn) Switches(Town town)
    {
        var supplyOf = SupplyOfSwitch(town);
        var units = new List<SharedUnit>();
        foreach (var group in PackCapacity.LoadsBySwitch(town).GroupBy(l => l.SwitchGroup, StringComparer.Ordinal))
        {
            var stays = group.Select(l => Stays(l.Building, supplyOf.GetValueOrDefault(group.Key))).OfType<string>().Distinct(StringComparer.Ordinal).ToList();
            if (stays.Count > 1)
            {
                return ([], $"Switch {group.Key} lights houses that are to stay on packs {string.Join(" and ", stays)}: hang them on different switches, or let them go free.");
            }

            units.Add(new SharedUnit(
                $"Switch {group.Key}", group.Key, group.Select(l => (l.Building.Key, l.Lamps)).ToItemList(), group.Sum(l => l.Amperes),
                group.Average(l => X(l.Building)), group.Average(l => Y(l.Building)), stays.FirstOrDefault()));
        }

        var none = town.Buildings.Where(b => SharedRuns.Switches(b) is [null]).Select(b => b.Key).ToHashSet(StringComparer.Ordinal);
        units.AddRange(PackCapacity.Loads(town).Where(b => none.Contains(b.Building.Key)).Select(b => House(b, b.Building, supplyOf)));
        return (units, null);
    }

    private static SharedUnit House(BuildingLoad load, Building own, Dictionary<string, string?> supplyOf) => new(
        own.Name, own.State == BuildingState.Fixed ? own.SwitchGroup : null, [(own.Key, load.Lamps)], load.Amperes, X(own), Y(own), Stays(own, own.SwitchGroup is { } group ? supplyOf.GetValueOrDefault(group) : null));

    // What is glued keeps its switch and so its pack; for the rest the maker may have said one.
    private static string? Stays(Building building, string? supply) => building.State == BuildingState.Fixed && supply is not null ? supply : building.Pack;

    private static Dictionary<string, string?> SupplyOfSwitch(Town town) => town.SwitchGroups.ToDictionary(g => g.Id, g => g.Supply, StringComparer.Ordinal);

    private static double X(Building building) => building.Place?.At.X.Metres ?? building.Distance?.Metres ?? building.PairLength?.Metres ?? 0;

    private static double Y(Building building) => building.Place?.At.Y.Metres ?? 0;
}
