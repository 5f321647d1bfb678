using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Plan.Checks;

/// <summary>Pairs that begin at other pairs: what they begin at, and on which switch.</summary>
internal static class SharedRunChecks
{
    internal static IEnumerable<Problem> Of(Town town)
    {
        foreach (var problem in Twice.In(town.Taps.Select(t => t.Id), "taps", "tap"))
        {
            yield return problem;
        }

        var buildings = town.Buildings.GroupBy(b => b.Key, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        var carried = new Dictionary<string, ItemList<string?>>(StringComparer.Ordinal);
        foreach (var route in town.Routes.Where(r => buildings.ContainsKey(r.Building)))
        {
            carried.TryAdd(route.Building, SharedRuns.Switches(buildings[route.Building]));
        }

        foreach (var tap in town.Taps)
        {
            carried[tap.Id] = [tap.SwitchGroup];
        }

        var starts = SharedRuns.Starts(town);
        for (var i = 0; i < town.Taps.Count; i++)
        {
            var tap = town.Taps[i];
            if (buildings.ContainsKey(tap.Id))
            {
                yield return new Problem($"taps[{i}].id", "named-twice", $"There is a building called \"{tap.Id}\" as well as a tap.", "Give the tap another id.");
            }

            if (!town.SwitchGroups.Any(g => g.Id == tap.SwitchGroup))
            {
                yield return new Problem($"taps[{i}].switch_group", "points-at-nothing", $"There is no switch group \"{tap.SwitchGroup}\".", "Name the switch whose pair branches here.");
            }

            if (tap.Length.Millimetres <= 0)
            {
                yield return new Problem($"taps[{i}].length_mm", "size", $"The pair to tap {tap.Id} is {tap.Length.Millimetres} mm long; more than 0 is allowed.", "Measure the pair.");
            }

            foreach (var problem in Run(tap.Id, $"tap {tap.Id}", tap.From, tap.Wire, [tap.SwitchGroup], $"taps[{i}]"))
            {
                yield return problem;
            }

            if (tap.Wireways.FirstOrDefault(w => town.Board?.Wireways.Any(x => x.Id == w) != true) is { } way)
            {
                yield return new Problem($"taps[{i}].wireways", "points-at-nothing", $"There is no wireway \"{way}\".", "Name the wireways the pair runs through, or leave them out.");
            }
        }

        for (var i = 0; i < town.Routes.Count; i++)
        {
            var route = town.Routes[i];
            if (buildings.TryGetValue(route.Building, out var building))
            {
                foreach (var problem in Run(route.Building, building.Name, route.From, route.Wire, SharedRuns.Switches(building), $"routes[{i}]"))
                {
                    yield return problem;
                }
            }
        }

        IEnumerable<Problem> Run(string run, string name, string? from, string? wire, ItemList<string?> switches, string path)
        {
            if (wire is not null && Catalogue.FindWire(town, wire) is null)
            {
                yield return new Problem($"{path}.wire", "points-at-nothing", $"There is no wire \"{wire}\" in the catalogue or among your own parts.", "Name a wire of the catalogue.");
            }

            if (from is null)
            {
                yield break;
            }

            if (!carried.TryGetValue(from, out var there))
            {
                yield return new Problem($"{path}.from", "points-at-nothing", $"The pair of {name} begins at \"{from}\", which is neither a tap nor a building with a route.", "Leave it out for a pair from the bank.");
            }
            else if (switches.Count != 1 || !switches.Equals(there))
            {
                yield return new Problem($"{path}.from", "another-switch", $"The pair of {name} begins at {from}, which is not on the same one switch.", "Give it a pair from the bank, or hang both on one switch.");
            }

            var round = new HashSet<string>(StringComparer.Ordinal);
            for (var at = run; at is not null; at = starts.GetValueOrDefault(at))
            {
                if (!round.Add(at))
                {
                    yield return new Problem($"{path}.from", "round", $"The pair of {name} leads back to itself and never to the bank.", "Let one of the pairs begin at the bank.");
                    break;
                }
            }
        }
    }
}
