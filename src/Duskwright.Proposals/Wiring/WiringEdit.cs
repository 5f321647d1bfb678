using System.Collections.Immutable;
using System.Globalization;
using Duskwright.Harness.Routes;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;

namespace Duskwright.Proposals.Wiring;

/// <summary>A way to wire one switch as an edit of the town, and what it changes in words.</summary>
/// <param name="Edit">The edit.</param>
/// <param name="Changes">What changes against the town as it stands, a sentence each; one that says so where nothing does.</param>
public sealed record WiringEdit(AcceptWiring Edit, ItemList<string> Changes)
{
    internal static WiringEdit Of(Town town, GroupWiring wiring, GroupWiring standing)
    {
        var tree = wiring.Tree;
        var held = SharedRuns.Held(town);
        var houseAt = tree.Ends.ToDictionary(e => e.Junction, e => e.Building);
        var tapAt = TapIds(town, wiring.SwitchGroup, [.. tree.Pieces.Select(p => p.To).Where(j => !houseAt.ContainsKey(j))], held);
        string? Start(int junction) => junction == 0 ? null : houseAt.GetValueOrDefault(junction) ?? tapAt[junction];
        var routes = new List<Route>();
        var taps = new List<Tap>();
        foreach (var (piece, i) in tree.Pieces.Select((p, i) => (p, i)))
        {
            var wire = wiring.WireOf[i];
            if (houseAt.TryGetValue(piece.To, out var house))
            {
                if (piece.Points.Length > 1 && !held.Contains(house))
                {
                    routes.Add(new Route
                    {
                        Building = house,
                        From = Start(piece.From),
                        Points = Line(piece.Points.Reverse()),
                        Length = Millimetres(piece.Metres),
                        Wire = tree.Beyond(i).Length == 1 ? null : wire.Id,
                        Wireways = piece.Wireways.ToItemList(),
                    });
                }
            }
            else if (!held.Contains(tapAt[piece.To]))
            {
                taps.Add(new Tap
                {
                    Id = tapAt[piece.To],
                    SwitchGroup = wiring.SwitchGroup,
                    From = Start(piece.From),
                    Points = Line(piece.Points),
                    Length = Millimetres(piece.Metres),
                    Wire = wire.Id,
                    Wireways = piece.Wireways.ToItemList(),
                });
            }
        }

        var edit = new AcceptWiring(wiring.SwitchGroup, routes.ToItemList(), taps.ToItemList(), $"Wire switch {wiring.SwitchGroup} by {WiringWay.Words(tree.Way)}");
        return new WiringEdit(edit, Words(wiring, standing));
    }

    // A tap is named after its switch and takes the first number that no tap, building or code has.
    private static Dictionary<int, string> TapIds(Town town, string group, IReadOnlyList<int> junctions, IReadOnlySet<string> held)
    {
        var taken = town.Taps.Where(t => t.SwitchGroup != group || held.Contains(t.Id)).Select(t => t.Id)
            .Concat(town.Buildings.Select(b => b.Key)).Concat(town.Buildings.Select(b => b.Code).OfType<string>()).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var free = Enumerable.Range(1, taken.Count + junctions.Count).Select(n => string.Create(CultureInfo.InvariantCulture, $"T{group}{n}")).Where(id => !taken.Contains(id));
        return junctions.Zip(free).ToDictionary(x => x.First, x => x.Second);
    }

    private static ItemList<string> Words(GroupWiring after, GroupWiring before)
    {
        var words = new List<string>();
        if (before.Tree.Way != after.Tree.Way)
        {
            words.Add($"Switch {after.SwitchGroup} is wired by {WiringWay.Words(after.Tree.Way)}, not by {WiringWay.Words(before.Tree.Way)}.");
        }

        void Number(string what, double was, double now, string unit, double same)
        {
            if (Math.Abs(now - was) >= same)
            {
                words.Add(string.Create(CultureInfo.InvariantCulture, $"{what}: {now:0.##}{unit} instead of {was:0.##}{unit}."));
            }
        }

        Number("Wire to cut, both conductors", before.WireMetres, after.WireMetres, " m", 0.01);
        Number("Joints", before.Joints, after.Joints, "", 0.5);
        Number("Joints nobody can reach once the town stands", before.OutOfReach, after.OutOfReach, "", 0.5);
        Number($"Lamps darkened by one broken joint, of {after.Lamps}", before.Darkened, after.Darkened, "", 0.5);
        Number($"Most lost on the way, at {after.WorstDropAt}", before.WorstDropVolts * 1000, after.WorstDropVolts * 1000, " mV", 0.5);
        Number("Faintest lamp against its like, of 100 in lightness", before.Evenness, after.Evenness, "", 0.05);
        return words.Count > 0 ? words.ToItemList() : ["Nothing changes: the switch is wired so already."];
    }

    private static Length Millimetres(double metres) => Length.FromMillimetres(Math.Round(1000 * metres));

    private static ItemList<Point> Line(IEnumerable<PlanePoint> points) => points.Select(p => Point.At(Math.Round(1000 * p.X, 1), Math.Round(1000 * p.Y, 1))).ToItemList();
}
