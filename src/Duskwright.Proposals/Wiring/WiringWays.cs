using Duskwright.Harness.Feeds;
using Duskwright.Harness.Routes;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Proposals.Wiring;

/// <summary>Three ways to wire a town, computed side by side. A pair that is laid, or whose house is fixed, is the same in all of them.</summary>
/// <param name="OwnPairs">A pair from the bank to each house.</param>
/// <param name="Trunks">A trunk for each switch, tapped at its houses.</param>
/// <param name="Chains">A pair for each switch, from house to house.</param>
/// <param name="VisibleStep">Difference of lightness L* at which neighbouring windows differ visibly.</param>
public sealed record WiringWays(WiringWay OwnPairs, WiringWay Trunks, WiringWay Chains, double VisibleStep)
{
    // A thicker trunk that wins less of L* than this is copper for nothing: common practice, no source.
    private const double WorthThickening = 0.2;

    /// <summary>The three ways, the first a pair to each house.</summary>
    public ItemList<WiringWay> All => [OwnPairs, Trunks, Chains];

    /// <summary>Computes the three ways.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="cancel">Stops the proofs; the shortest wiring found so far is given.</param>
    /// <returns>The ways, or why there are none.</returns>
    public static (WiringWays? Ways, string? Why) Of(TownStudy study, CancellationToken cancel = default)
    {
        var town = study.Town;
        if (town.Board is not { Bank: { } bank } board)
        {
            return (null, "The town has no board with a bank yet: give it a size and place the houses, and the ways to wire it can be compared.");
        }

        var demands = Demands(town, board, bank);
        var groups = town.SwitchGroups
            .Where(g => g.Supply is not null)
            .Select(g => new WiredGroup(
                study, g.Id, study.Buildings.Where(b => b.Lamps.Any(l => l.SwitchGroup == g.Id)), b => demands.GetValueOrDefault(b.Building.Key)))
            .Where(g => g.Houses.Any())
            .ToList();
        if (groups.Count == 0)
        {
            return (null, "No house hangs on a switch yet: share the lamps over packs, and the ways to wire them can be compared.");
        }

        if (groups.TrueForAll(g => g.Free == 0))
        {
            return (null, "Every pair is laid, or no house is placed where a pair can reach it: there is nothing left to choose.");
        }

        var feeder = new Feeder(BoardGround.Wireways(town), BoardGround.InMetres(bank.At), BoardGround.Rules(town));
        WiringWay Way(FeedWay way) => Wired(study, board, groups, [.. groups.Select(g => g.Lay(feeder, way, cancel))]);
        var standing = groups.Select(g => g.Standing()).ToList();
        return (new WiringWays(Way(FeedWay.OwnPairs), Way(FeedWay.Trunk), Way(FeedWay.Chain), town.Show.VisibleStep) { Standing = AsItStands(study, board, groups, standing) }, null);
    }

    /// <summary>The town wired as it stands; a pair that is not drawn yet runs to the bank.</summary>
    public required WiringWay Standing { get; init; }

    /// <summary>The edit by which one switch of a town is wired in one of these ways.</summary>
    /// <param name="study">The results the ways were computed from.</param>
    /// <param name="wiring">The switch in one of the three ways.</param>
    /// <returns>The edit, and what it changes in words.</returns>
    public WiringEdit Taking(TownStudy study, GroupWiring wiring) => WiringEdit.Of(study.Town, wiring, Standing.Groups.First(g => g.SwitchGroup == wiring.SwitchGroup));

    /// <summary>What is advised: for each switch the way with the least of what the maker minds.</summary>
    /// <param name="robustness">0 minds only wire, 1 only what a broken joint darkens and joints out of reach.</param>
    /// <returns>One advice a switch, in their order.</returns>
    public ItemList<WiringAdvice> Advised(double robustness) => Enumerable.Range(0, OwnPairs.Groups.Count)
        .Select(g => WiringAdvice.Of([.. All.Select(w => w.Groups[g])], Math.Clamp(robustness, 0, 1), VisibleStep))
        .ToItemList();

    // Houses whose pair is still open and can reach the bank. One whose lamps hang on several switches, or whose pair is to go along a wireway of the maker's choice, keeps a pair of its own.
    private static Dictionary<string, RouteDemand> Demands(Town town, Board board, Bank bank)
    {
        var held = SharedRuns.Held(town);
        var open = town.Buildings
            .Where(b => b.Place is not null && b.PairLength is null && !held.Contains(b.Key) && SharedRuns.Switches(b).Count == 1 && b.Wireway is null && BoardGround.Shut(board, b) is null)
            .Select(b => BoardGround.Demand(board, b))
            .ToList();
        var answers = Router.Route(BoardGround.Wireways(town), [.. open], BoardGround.InMetres(bank.At), BoardGround.Rules(town));
        return open.Zip(answers).Where(x => x.Second.NoRoute is null).ToDictionary(x => x.First.Building, x => x.First, StringComparer.Ordinal);
    }

    // The shared pairs of a switch are made thicker as long as its faintest lamp looks visibly fainter than its like and gains by it.
    private static WiringWay Wired(TownStudy study, Board board, List<WiredGroup> groups, List<LaidFeed> trees)
    {
        var town = study.Town;
        var sizes = TrunkWires.From(study.UsualWire, Catalogue.Parts.Wires.Concat(town.OwnParts.Wires));
        var size = new int[groups.Count];
        var settled = trees.Select(t => !Enumerable.Range(0, t.Free).Any(i => t.Tree.Beyond(i).Length > 1)).ToArray();
        var now = Fed();
        while (true)
        {
            var trying = Enumerable.Range(0, groups.Count).Where(g => !settled[g] && size[g] + 1 < sizes.Count && Faintest(now, g) < 100 - town.Show.VisibleStep).ToList();
            if (trying.Count == 0)
            {
                break;
            }

            trying.ForEach(g => size[g]++);
            var then = Fed();
            foreach (var g in trying.Where(g => Faintest(then, g) < Faintest(now, g) + WorthThickening))
            {
                size[g]--;
                settled[g] = true;
            }

            now = Fed();
        }

        var wires = groups.Select((_, g) => Wires(g)).ToList();
        return new WiringWay(
            groups.Select((g, i) => g.Computed(trees[i].Tree, wires[i], now[g.Id])).ToItemList(),
            Holes(board, groups.SelectMany((g, i) => g.ThroughHoles(trees[i].Tree, wires[i]))));

        ItemList<WirePart> Wires(int g) => groups[g].Wires(trees[g], sizes[size[g]]);

        Dictionary<string, List<FedBuilding>> Fed() => study.FedBy(groups.Select((g, i) => g.Feed(trees[i].Tree, Wires(i))).ToItemList())
            .GroupBy(f => f.SwitchGroup)
            .ToDictionary(f => f.Key, f => f.ToList(), StringComparer.Ordinal);

        double Faintest(Dictionary<string, List<FedBuilding>> fed, int g) => fed[groups[g].Id].Min(f => f.Evenness);
    }

    private static WiringWay AsItStands(TownStudy study, Board board, List<WiredGroup> groups, List<LaidFeed> trees)
    {
        var wires = groups.Select((g, i) => trees[i].GivenWires).ToList();
        var fed = study.FedBy(groups.Select((g, i) => g.Feed(trees[i].Tree, wires[i])).ToItemList()).GroupBy(f => f.SwitchGroup).ToDictionary(f => f.Key, f => f.ToList(), StringComparer.Ordinal);
        return new WiringWay(
            groups.Select((g, i) => g.Computed(trees[i].Tree, wires[i], fed[g.Id])).ToItemList(),
            Holes(board, groups.SelectMany((g, i) => g.ThroughHoles(trees[i].Tree, wires[i]))));
    }

    private static ItemList<HoleUse> Holes(Board board, IEnumerable<(string Hole, WirePart Wire)> pairs)
    {
        var through = pairs.ToLookup(p => p.Hole, p => p.Wire, StringComparer.Ordinal);
        return board.FeedHoles.Select(h =>
        {
            var drill = HoleDrill.Millimetres([.. through[h.Id]]);
            return new HoleUse(h.Id, through[h.Id].Count(), drill, h.Bore is { } bore && bore.Millimetres < drill);
        }).ToItemList();
    }
}
