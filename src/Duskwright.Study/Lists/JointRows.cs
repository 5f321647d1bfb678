using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Lists;

/// <summary>Makes the list of joints still to be made, with their sleeves: at taps, where a pair arrives in a house, and at its lamps.</summary>
internal static class JointRows
{
    private const int ConductorsOfPair = 2;

    // Bores in which sleeves are sold, before shrinking; common practice, no source.
    private static readonly double[] Bores = [1, 1.5, 2, 3, 4.5, 6, 9];

    internal static ItemList<JointRow> Of(ResolvedTown resolved)
    {
        var town = resolved.Town;
        var standing = Standing.In(resolved);
        var begun = SharedRuns.Starts(town).ToLookup(s => s.Value, s => s.Key, StringComparer.Ordinal);
        var wires = resolved.Buildings.ToDictionary(b => b.Building.Key, b => b.Pair.Wire, StringComparer.Ordinal);
        foreach (var tap in town.Taps)
        {
            wires[tap.Id] = SharedPairs.WireOf(town, tap);
        }

        var tail = Catalogue.FindWire(town, town.Wiring.TailWire ?? Usual.TailWire)!;
        var rows = town.Taps.Where(t => !standing.Tap(t))
            .Select(t => Joint($"tap {t.Id}", "the shared pair and those that go on from it", ConductorsOfPair, [wires[t.Id], .. begun[t.Id].Select(r => wires[r])], outOfReach: true)).ToList();
        foreach (var (building, pair, lamps) in resolved.Buildings.Select(b => (b.Building, b.Pair, b.Lamps)))
        {
            // A pair is joined when it is laid, lamps when the house is fitted.
            var shut = building.Roof?.LiftsOff != true;
            foreach (var pairsLamps in standing.Pair(building) ? [] : lamps.GroupBy(l => l.SwitchGroup))
            {
                rows.Add(Joint(
                    building.Name,
                    begun[building.Key].Any() ? "its pair, those that go on from it, and its lamps" : pairsLamps.Key is { } group && lamps.Any(l => l.SwitchGroup != group) ? $"its pair of switch {group} and the lamps on it" : "its pair and its lamps",
                    ConductorsOfPair,
                    [pair.Wire, .. begun[building.Key].Select(r => wires[r]), .. pairsLamps.Select(_ => tail)],
                    shut));
            }

            // At each lamp one on its way back, and one before it where it has a resistor.
            var atLamps = building.State is BuildingState.Idea or BuildingState.Shell ? lamps.Where(l => l.Part.Kind != LampKind.ReadyWired).ToList() : [];
            if (atLamps.Count > 0)
            {
                rows.Add(Joint(building.Name, "a lamp's own leads, and its resistor where it has one", atLamps.Sum(l => l.ResistorOhms.Typical > 0 ? 2 : 1), [tail, tail], shut));
            }
        }

        return rows.ToItemList();
    }

    // Wires fill at most half of a sleeve that slides over them, as of a hole.
    private static JointRow Joint(string place, string what, int joints, IReadOnlyList<WirePart> wires, bool outOfReach)
    {
        var across = Math.Sqrt(2 * wires.Sum(w => Math.Pow(w.OuterDiameter.Millimetres, 2)));
        return new JointRow(place, what, joints, wires.Count, Bores.FirstOrDefault(b => b >= across, Math.Ceiling(across)), outOfReach);
    }
}
