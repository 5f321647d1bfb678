using System.Collections.Immutable;

namespace Duskwright.Harness.Routes;

/// <summary>Shortest ways for pairs from buildings to the bank along wireways; where a wireway would hold more pairs than it takes, those go another way that lose the least by it.</summary>
public static class Router
{
    /// <summary>Finds a way for each building.</summary>
    /// <param name="ways">The wireways; where one touches or crosses another they are joined.</param>
    /// <param name="demands">Where pairs start.</param>
    /// <param name="bank">Where they end.</param>
    /// <param name="rules">Slack, detour where there are no wireways, and how far a pair may run off them.</param>
    /// <returns>One answer a demand, in their order.</returns>
    public static ImmutableArray<RouteAnswer> Route(
        ImmutableArray<WirewayLine> ways, ImmutableArray<RouteDemand> demands, PlanePoint bank, RouteRules rules)
    {
        if (ways.IsEmpty && rules.Free.IsEmpty && rules.Around is { } around)
        {
            var free = new FreeRouter(around);
            return [.. demands.Select(d => Round(d, free, bank, rules))];
        }

        if (ways.IsEmpty && rules.Free.IsEmpty)
        {
            return [.. demands.Select(d => new RouteAnswer(d.Building, [d.From, bank], (d.From.DistanceTo(bank) * rules.DetourFactor) + rules.SlackMetres, [], null))];
        }

        var graph = new WireGraph(ways, [bank, .. demands.Select(d => d.Hole ?? d.From)], rules);
        var tree = graph.ShortestFrom(0);
        var trees = new Dictionary<string, ShortestTree>(StringComparer.Ordinal);
        return Crowding.Relieved(ways, [.. demands.Select((demand, i) => Answer(demand, i + 1, graph, tree, bank, rules))], Again);

        RouteAnswer Again(int demand, ImmutableSortedSet<string> closed)
        {
            var key = string.Join('\n', closed);
            if (!trees.TryGetValue(key, out var open))
            {
                trees[key] = open = graph.ShortestFrom(0, closed);
            }

            return Answer(demands[demand], demand + 1, graph, open, bank, rules, closed);
        }
    }

    private static RouteAnswer Answer(RouteDemand demand, int terminal, WireGraph graph, ShortestTree tree, PlanePoint bank, RouteRules rules, IReadOnlyCollection<string>? closed = null)
    {
        var hole = demand.Hole ?? demand.From;
        var (stub, bankStub) = (graph.Stub(terminal), graph.Stub(0));
        if (double.IsInfinity(stub.Metres) || double.IsInfinity(bankStub.Metres))
        {
            return RouteAnswer.Failed(demand.Building, $"{(double.IsInfinity(stub.Metres) ? demand.Building : "The bank")} is shut in by obstacles under the board and reaches no wireway{OrArea(rules)}{(double.IsInfinity(stub.Metres) ? "" : $", so {demand.Building} cannot reach it")}");
        }

        if (stub.Metres > rules.MostStubMetres)
        {
            return RouteAnswer.Failed(demand.Building, $"{demand.Building} lies {Mm(stub.Metres)} mm from the nearest wireway{OrArea(rules)}; at most {Mm(rules.MostStubMetres)} mm is bridged");
        }

        if (bankStub.Metres > rules.MostStubMetres)
        {
            return RouteAnswer.Failed(demand.Building, $"The bank lies {Mm(bankStub.Metres)} mm from the nearest wireway{OrArea(rules)}, so {demand.Building} cannot reach it");
        }

        var (points, used, length) = demand.Along is { } along ? WayAlong.Shortest(graph, graph.ShortestFrom(terminal, closed), tree, along, closed) : tree.PathTo(graph.TerminalNode(terminal));
        if (double.IsInfinity(length) && demand.Along is not null)
        {
            return RouteAnswer.Failed(demand.Building, $"{demand.Building} is to go along wireway {demand.Along}, and no way from it leads there and on to the bank");
        }

        if (double.IsInfinity(length))
        {
            return RouteAnswer.Failed(demand.Building, $"{demand.Building} reaches a wireway{OrArea(rules)} that does not lead to the bank");
        }

        List<PlanePoint> all = [demand.From, .. stub.Points, .. points, .. bankStub.Points.Reverse()];
        var total = demand.From.DistanceTo(hole) + stub.Metres + length + bankStub.Metres + rules.SlackMetres;
        return new RouteAnswer(demand.Building, [.. WithoutRepeats(all)], total, used, null);
    }

    // Without wireways, taut from the hole to the bank.
    private static RouteAnswer Round(RouteDemand demand, FreeRouter free, PlanePoint bank, RouteRules rules)
    {
        var hole = demand.Hole ?? demand.From;
        var run = free.Between(hole, bank);
        if (!run.Points.IsEmpty)
        {
            return new RouteAnswer(demand.Building, [.. WithoutRepeats([demand.From, .. run.Points])], demand.From.DistanceTo(hole) + run.Metres + rules.SlackMetres, [], null);
        }

        return RouteAnswer.Failed(demand.Building, !free.IsFree(hole)
            ? $"{demand.Building} comes through the board onto an obstacle; lead its pair through a hole beside it"
            : !free.IsFree(bank)
            ? $"The bank lies over an obstacle, so {demand.Building} cannot reach it"
            : $"{demand.Building} is parted from the bank by obstacles under the board, {Mm(free.Gap(hole, bank))} mm across where they are narrowest; drill through there or draw a wireway");
    }

    private static IEnumerable<PlanePoint> WithoutRepeats(List<PlanePoint> points) =>
        points.Where((p, i) => i == 0 || p.DistanceTo(points[i - 1]) > 1e-6);

    private static string OrArea(RouteRules rules) => rules.Free.IsEmpty ? "" : " or free area";

    private static string Mm(double metres) => Math.Round(metres * 1000).ToString(System.Globalization.CultureInfo.InvariantCulture);
}

/// <summary>A wireway.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Points">Its line, m.</param>
/// <param name="ClimbMetres">Length added for a change of level, spread along it.</param>
/// <param name="CapacityPairs">How many pairs it takes; none for as many as are needed.</param>
/// <param name="TakenPairs">How many are laid in it already.</param>
public sealed record WirewayLine(string Id, ImmutableArray<PlanePoint> Points, double ClimbMetres = 0, int? CapacityPairs = null, int TakenPairs = 0);

/// <summary>Where a pair starts.</summary>
/// <param name="Building">The building.</param>
/// <param name="From">Where it stands.</param>
/// <param name="Hole">The hole its pair goes through; none for straight down.</param>
/// <param name="Along">The wireway it is to go along; none where any will do.</param>
public sealed record RouteDemand(string Building, PlanePoint From, PlanePoint? Hole = null, string? Along = null);

/// <summary>The maker's rules for routes.</summary>
/// <param name="SlackMetres">Added to each pair, m.</param>
/// <param name="DetourFactor">Pair over straight distance where no wireway is drawn.</param>
/// <param name="MostStubMetres">How far a pair may run off the wireways to reach one, m.</param>
public sealed record RouteRules(double SlackMetres, double DetourFactor, double MostStubMetres = 0.25)
{
    /// <summary>The ground under the board with what wire goes round: between wireways and what joins them, and everywhere where no wireway is drawn; none where no obstacle is drawn.</summary>
    public FreeArea? Around { get; init; }

    /// <summary>Areas in which a pair may leave the wireways and lie anywhere, each a closed outline without repeat of its first point, m; none where none is drawn. Overlapping ones are one.</summary>
    public ImmutableArray<ImmutableArray<PlanePoint>> Free { get; init; } = [];
}

/// <summary>A way found, or why there is none.</summary>
/// <param name="Building">The building.</param>
/// <param name="Points">Its line from the building to the bank, m; empty where there is none.</param>
/// <param name="LengthMetres">Length of the pair, slack and climbs included, m.</param>
/// <param name="Wireways">The wireways it uses, in order.</param>
/// <param name="NoRoute">Why there is none, naming the building and the gap; none where there is a way.</param>
public sealed record RouteAnswer(
    string Building, ImmutableArray<PlanePoint> Points, double LengthMetres, ImmutableArray<string> Wireways, string? NoRoute)
{
    internal static RouteAnswer Failed(string building, string reason) => new(building, [], 0, [], reason);
}
