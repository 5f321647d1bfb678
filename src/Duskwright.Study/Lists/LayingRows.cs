using System.Collections.Immutable;
using Duskwright.Harness.Laying;
using Duskwright.Harness.Routes;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Lists;

/// <summary>Makes the laying order of a town: what covers what decides, and where nothing does, the back of the board comes before the front, so that no arm reaches over a house.</summary>
/// <remarks>A pair lies on the surface from its house to its feed hole and under the board from there; without a hole it goes straight down.</remarks>
internal static class LayingRows
{
    internal static LayingList Of(ResolvedTown resolved)
    {
        var town = resolved.Town;
        if (town.Board is not { } board)
        {
            return new LayingList([], [], [], []);
        }

        var laid = SharedRuns.Held(town);
        var placed = resolved.Buildings.Where(b => b.Building.Place is not null).OrderByDescending(b => b.Building.Place!.At.Y.Metres).ThenBy(b => b.Building.Place!.At.X.Metres).ToList();
        var holes = board.FeedHoles.ToDictionary(h => h.Id, StringComparer.Ordinal);
        var order = LayingPlanner.Order(new LayingProblem([.. placed.Select(b => House(b, holes, laid))]));
        var names = town.Buildings.ToDictionary(b => b.Key, b => b.Name, StringComparer.Ordinal);
        var wired = placed.Where(b => b.Lamps.Count > 0).Select(b => b.Building).ToDictionary(b => b.Key, StringComparer.Ordinal);
        var pulled = new HashSet<string>(StringComparer.Ordinal);
        var shared = new SharedLaying(town, laid, names);
        var rows = order.Steps
            .SelectMany(s => shared.Before(s.House).Append((s.Act, s.House, Do: Do(s, names, wired.GetValueOrDefault(s.House), pulled, shared), Because: Because(s, names))).Select(row => (Row: row, Over: row.Act == s.Act && s.Act is LayingAct.PullFirst or LayingAct.SetDown ? s.Because.ToItemList() : [])))
            .Select((s, i) => new LayingRow(i + 1, s.Row.Act, s.Row.Item2, s.Row.Do, s.Row.Because) { CoveredBy = s.Over })
            .ToItemList();
        return new LayingList(
            rows,
            order.Knots.Select(k => Words(k, names)).Concat(order.Covered.Select(c => Words(c, names))).Concat(shared.Notes(placed.Select(b => b.Building))).ToItemList(),
            Keys(Stands.Glued),
            Keys(Stands.Loose))
        {
            Removable = order.Over.Where(o => names.ContainsKey(o.Under)).GroupBy(o => o.Under, o => o.House)
                .Where(o => town.Buildings.First(b => b.Key == o.Key).State != BuildingState.Fixed)
                .Select(o => new RemovableHouse(o.Key, Words(o.Key, [.. o], rows, names)))
                .ToItemList(),
            LaidTaps = town.Taps.Where(t => laid.Contains(t.Id)).Select(t => t.Id).ToItemList(),
        };

        ItemList<string> Keys(Stands stands) => placed.Where(b => StandsOf(b.Building, laid) == stands).Select(b => b.Building.Key).ToItemList();
    }

    private static LaidHouse House(ResolvedBuilding resolved, Dictionary<string, FeedHole> holes, IReadOnlySet<string> laid)
    {
        var building = resolved.Building;
        return new LaidHouse(building.Key, Footprint.Of(building.Place!), StandsOf(building, laid), Surface());

        ImmutableArray<PlanePoint> Surface()
        {
            if (resolved.Lamps.Count == 0)
            {
                return [];
            }

            var house = new PlanePoint(building.Place!.At.X.Metres, building.Place.At.Y.Metres);
            return building.FeedHole is { } id ? [house, new PlanePoint(holes[id].At.X.Metres, holes[id].At.Y.Metres)] : [house];
        }
    }

    // A house that is fitted and whose pair is laid stands in its place and can still be lifted.
    private static Stands StandsOf(Building building, IReadOnlySet<string> laid) =>
        building.State == BuildingState.Fixed ? Stands.Glued : building.State == BuildingState.Fitted && laid.Contains(building.Key) ? Stands.Loose : Stands.ToCome;

    private static string Do(LayingStep step, Dictionary<string, string> names, Building? wired, HashSet<string> pulled, SharedLaying shared)
    {
        var name = names[step.House];
        var pull = wired is null ? "" : wired.FeedHole is { } hole ? $"pull the pair of {name} through hole {hole}{shared.Joined(step.House)}" : $"pull the pair of {name} straight down{shared.Joined(step.House)}";
        return step.Act switch
        {
            LayingAct.PullFirst when pulled.Add(step.House) => $"P{pull[1..]} and leave the house beside its place",
            LayingAct.TakeOut => $"Lift {name} out; its pair stays in its hole",
            LayingAct.PutBack => $"Set {name} back",
            _ => pull.Length > 0 && pulled.Add(step.House) ? $"P{pull[1..]} and set it down" : $"Set {name} down",
        };
    }

    private static string Because(LayingStep step, Dictionary<string, string> names) => step switch
    {
        { Because: [] } => "",
        { Act: LayingAct.TakeOut } => $"it stands over the way of {Joined(step.Because, names)}",
        _ => $"{Joined(step.Because, names)} will stand over its way",
    };

    private static string Words(LayingKnot knot, Dictionary<string, string> names) =>
        $"{string.Join(", ", knot.Houses.Zip(knot.Houses.Skip(1).Append(knot.Houses[0]), (a, b) => $"{names[b]} will stand over the way of {names[a]}"))}: none of them can be the first. "
        + $"Pull the pair of {Joined(knot.PulledFirst, names)} first and keep the house beside its place, not glued, until the others stand{(knot.Exact ? "; fewer will not do" : "")}.";

    private static string Words(CoveredWay way, Dictionary<string, string> names) =>
        $"{names[way.Under]} is glued over the way of {names[way.House]}: give {names[way.House]} another hole, clear of it.";

    private static string Words(string house, List<string> over, ItemList<LayingRow> rows, Dictionary<string, string> names)
    {
        var lifted = rows.Where(r => r.Building == house && r.Act == LayingAct.TakeOut).Select(r => r.Number).ToList();
        var back = rows.Where(r => r.Building == house && r.Act == LayingAct.PutBack).Select(r => r.Number).DefaultIfEmpty(0).Max();
        var ways = over.Count == 1 ? $"the way of {names[over[0]]}" : $"the ways of {Joined(over, names)}";
        return $"{names[house]} stands over {ways}{(lifted.Count > 0 ? $", is lifted in step {string.Join(" and ", lifted)} and set back in step {back}" : "")}: glued down, it shuts {(over.Count == 1 ? "that pair" : "those pairs")} in for good. Leave it to lift off.";
    }

    private static string Joined(IEnumerable<string> keys, Dictionary<string, string> names) => string.Join(" and ", keys.Select(k => names[k]));
}
