using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Plan.Checks;

/// <summary>Names that point at nothing.</summary>
internal static class ReferenceChecks
{
    private const double MostReelMetres = 1000;

    internal static IEnumerable<Problem> Of(Town town)
    {
        var groups = town.SwitchGroups.Select(g => g.Id).ToHashSet(StringComparer.Ordinal);
        var supplies = town.Supplies.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        var buildings = town.Buildings.Select(b => b.Key).ToHashSet(StringComparer.Ordinal);
        var levels = (town.Board?.Levels ?? []).Select(l => l.Id).ToHashSet(StringComparer.Ordinal);
        var holes = (town.Board?.FeedHoles ?? []).Select(h => h.Id).ToHashSet(StringComparer.Ordinal);
        var ways = (town.Board?.Wireways ?? []).Select(w => w.Id).ToHashSet(StringComparer.Ordinal);
        var found = new List<Problem>();

        void Named(string? id, HashSet<string> known, string path, string what)
        {
            if (id is not null && !known.Contains(id))
            {
                found.Add(Nothing(path, $"There is no {what} \"{id}\"", known));
            }
        }

        void PartNamed(string? id, Func<Town, string, object?> find, string path, string what, IEnumerable<string> known)
        {
            if (id is not null && find(town, id) is null)
            {
                found.Add(Nothing(path, $"There is no {what} \"{id}\" in the catalogue or among your own parts", known));
            }
        }

        var lampIds = Catalogue.Parts.Lamps.Select(l => l.Id).ToList();
        var wireIds = Catalogue.Parts.Wires.Select(w => w.Id).ToList();
        PartNamed(town.Wiring.Led, Catalogue.FindLamp, "wiring.led", "lamp", lampIds);
        PartNamed(town.Wiring.Wire, Catalogue.FindWire, "wiring.wire", "wire", wireIds);
        PartNamed(town.Wiring.TailWire, Catalogue.FindWire, "wiring.tail_wire", "wire", wireIds);
        PartNamed(town.Wiring.ReturnWire, Catalogue.FindWire, "wiring.return_wire", "wire", wireIds);

        for (var i = 0; i < town.Buildings.Count; i++)
        {
            var building = town.Buildings[i];
            var path = $"buildings[{i}]";
            PartNamed(Known(building.Led), Catalogue.FindLamp, $"{path}.led", "lamp", lampIds);
            PartNamed(Known(building.Wire), Catalogue.FindWire, $"{path}.wire", "wire", wireIds);
            Named(building.SwitchGroup, groups, $"{path}.switch_group", "switch group");
            Named(building.Pack, supplies, $"{path}.pack", "supply");
            Named(building.FeedHole, holes, $"{path}.feed_hole", "feed hole");
            Named(building.Wireway, ways, $"{path}.wireway", "wireway");
            Named(building.Place?.Level, levels, $"{path}.place.level", "level");
            for (var s = 0; s < building.Storeys.Count; s++)
            {
                for (var r = 0; r < building.Storeys[s].Rooms.Count; r++)
                {
                    for (var l = 0; l < building.Storeys[s].Rooms[r].Lamps.Count; l++)
                    {
                        var lamp = building.Storeys[s].Rooms[r].Lamps[l];
                        var at = $"{path}.storeys[{s}].rooms[{r}].lamps[{l}]";
                        PartNamed(Known(lamp.Led), Catalogue.FindLamp, $"{at}.led", "lamp", lampIds);
                        Named(lamp.SwitchGroup, groups, $"{at}.switch_group", "switch group");
                    }
                }
            }
        }

        for (var i = 0; i < town.Supplies.Count; i++)
        {
            PartNamed(town.Supplies[i].Part, Catalogue.FindSupply, $"supplies[{i}].part", "cell or supply", Catalogue.Parts.Supplies.Select(s => s.Id));
            PartNamed(town.Supplies[i].Fuse, Catalogue.FindFuse, $"supplies[{i}].fuse", "fuse", Catalogue.Parts.Fuses.Select(f => f.Id));
        }

        for (var i = 0; i < town.Reels.Count; i++)
        {
            var reel = town.Reels[i];
            if (Catalogue.FindWire(town, reel.Wire) is null)
            {
                found.Add(Nothing($"reels[{i}].wire", $"There is no wire \"{reel.Wire}\" in the catalogue or among your own parts", wireIds));
            }

            if (!(reel.Left.Metres is > 0 and <= MostReelMetres))
            {
                found.Add(new Problem($"reels[{i}].left_mm", "size", $"A reel holds {reel.Left.Millimetres} mm; more than 0 and at most {MostReelMetres} m is allowed.", "Leave out a reel that is empty."));
            }
        }

        for (var i = 0; i < town.Breakages.Count; i++)
        {
            if (town.Breakages.Take(i).Any(b => b.What == town.Breakages[i].What))
            {
                found.Add(new Problem($"breakages[{i}].what", "said-twice", "How often this breaks is said once already.", "Leave out one of the two."));
            }
        }

        for (var i = 0; i < town.SwitchGroups.Count; i++)
        {
            Named(town.SwitchGroups[i].Supply, supplies, $"switch_groups[{i}].supply", "supply");
        }

        for (var i = 0; i < town.Scenes.Count; i++)
        {
            for (var g = 0; g < town.Scenes[i].On.Count; g++)
            {
                Named(town.Scenes[i].On[g], groups, $"scenes[{i}].on[{g}]", "switch group");
            }
        }

        for (var i = 0; i < town.Routes.Count; i++)
        {
            Named(town.Routes[i].Building, buildings, $"routes[{i}].building", "building");
            if (town.Routes.Take(i).Any(r => r.Building == town.Routes[i].Building))
            {
                found.Add(new Problem($"routes[{i}].building", "said-twice", $"The route of {town.Routes[i].Building} is said once already.", "Leave out one of the two."));
            }

            foreach (var way in town.Routes[i].Wireways)
            {
                Named(way, ways, $"routes[{i}].wireways", "wireway");
            }

            if (town.Routes[i].Length.Millimetres <= 0)
            {
                found.Add(new Problem($"routes[{i}].length_mm", "size", $"The route of {town.Routes[i].Building} is {town.Routes[i].Length.Millimetres} mm long; more than 0 is allowed.", "Measure the pair."));
            }
        }

        for (var i = 0; i < (town.Board?.Wireways.Count ?? 0); i++)
        {
            Named(town.Board!.Wireways[i].Level, levels, $"board.wireways[{i}].level", "level");
        }

        for (var i = 0; i < (town.Board?.FeedHoles.Count ?? 0); i++)
        {
            Named(town.Board!.FeedHoles[i].Level, levels, $"board.feed_holes[{i}].level", "level");
        }

        for (var i = 0; i < (town.Calendar?.Steps.Count ?? 0); i++)
        {
            Named(town.Calendar!.Steps[i].Building, buildings, $"calendar.steps[{i}].building", "building");
        }

        for (var i = 0; i < town.Log.Count; i++)
        {
            Named(town.Log[i].Building, buildings, $"log[{i}].building", "building");
            Named(town.Log[i].Supply, supplies, $"log[{i}].supply", "supply");
        }

        return found;
    }

    // What a house has nobody may know; what is usual in the town, and its packs, are what is chosen.
    private static string? Known(string? id) => id == PartId.Unknown ? null : id;

    private static Problem Nothing(string path, string message, IEnumerable<string> known)
    {
        var few = known.Order(StringComparer.Ordinal).Take(13).ToList();
        return new Problem(
            path,
            "points-at-nothing",
            $"{message}.",
            few.Count == 0 ? "There are none in this town; add it, or leave this out." : $"Known are {string.Join(", ", few.Take(12))}{(few.Count > 12 ? " and more" : "")}.");
    }
}
