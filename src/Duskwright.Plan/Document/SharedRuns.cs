namespace Duskwright.Plan.Document;

/// <summary>Pairs that begin at other pairs: trunks with taps, and chains from house to house.</summary>
public static class SharedRuns
{
    /// <summary>The switches that light a building's lamps.</summary>
    /// <param name="building">The building.</param>
    /// <returns>Each once; a null stands for lamps that hang on no switch yet.</returns>
    public static ItemList<string?> Switches(Building building) => building.DescribedLamps().Select(l => l.Lamp.SwitchGroup).DefaultIfEmpty(null)
        .Select(g => g ?? building.SwitchGroup).Distinct().ToItemList();

    /// <summary>Where each pair begins that does not begin at the bank.</summary>
    /// <param name="town">The town.</param>
    /// <returns>The start, a tap's id or a building's key, by the tap's id or the building's key.</returns>
    public static IReadOnlyDictionary<string, string> Starts(Town town)
    {
        var starts = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (run, from) in town.Taps.Select(t => (t.Id, t.From)).Concat(town.Routes.Select(r => (r.Building, r.From))))
        {
            if (from is not null)
            {
                starts.TryAdd(run, from);
            }
        }

        return starts;
    }

    /// <summary>What is laid, and what it hangs on between it and the bank: these pairs are given.</summary>
    /// <param name="town">The town.</param>
    /// <returns>Taps' ids and buildings' keys. A building that is fixed counts as laid.</returns>
    public static IReadOnlySet<string> Held(Town town)
    {
        var starts = Starts(town);
        var held = new HashSet<string>(StringComparer.Ordinal);
        foreach (var laid in town.Routes.Where(r => r.Laid).Select(r => r.Building)
            .Concat(town.Taps.Where(t => t.Laid).Select(t => t.Id))
            .Concat(town.Buildings.Where(b => b.State == BuildingState.Fixed).Select(b => b.Key)))
        {
            for (var run = laid; run is not null && held.Add(run);)
            {
                run = starts.GetValueOrDefault(run);
            }
        }

        return held;
    }

    /// <summary>The town without what has nothing to begin at, or begins at another switch, and without taps that feed nothing. What is laid stays.</summary>
    /// <param name="town">The town.</param>
    /// <returns>The same town where every pair begins where it can.</returns>
    public static Town Kept(Town town)
    {
        while (true)
        {
            var buildings = town.Buildings.GroupBy(b => b.Key, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
            var routed = town.Routes.Select(r => r.Building).ToHashSet(StringComparer.Ordinal);
            var carries = new Dictionary<string, string?>(StringComparer.Ordinal);
            foreach (var tap in town.Taps)
            {
                carries.TryAdd(tap.Id, tap.SwitchGroup);
            }

            foreach (var building in buildings.Values.Where(b => routed.Contains(b.Key) && Switches(b).Count == 1))
            {
                carries.TryAdd(building.Key, Switches(building)[0]);
            }

            bool Begins(string? from, string? group) => from is null || (carries.TryGetValue(from, out var there) && there == group);
            var used = town.Taps.Select(t => t.From).Concat(town.Routes.Select(r => r.From)).OfType<string>().ToHashSet(StringComparer.Ordinal);
            var kept = town with
            {
                Taps = town.Taps.Where(t => t.Laid || (used.Contains(t.Id) && Begins(t.From, t.SwitchGroup))).ToItemList(),
                Routes = town.Routes.Where(r => r.Laid || (buildings.TryGetValue(r.Building, out var b) && (r.From is null || (Switches(b).Count == 1 && Begins(r.From, Switches(b)[0]))))).ToItemList(),
            };
            if (kept.Taps.Count == town.Taps.Count && kept.Routes.Count == town.Routes.Count)
            {
                return town;
            }

            town = kept;
        }
    }
}
