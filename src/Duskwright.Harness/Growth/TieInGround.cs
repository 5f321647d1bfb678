using System.Collections.Immutable;
using Duskwright.Harness.Routes;

namespace Duskwright.Harness.Growth;

/// <summary>Something a new building's pair can begin at: the bank, a tap, or a building whose lamps it goes on from.</summary>
/// <param name="Id">Its name.</param>
/// <param name="At">Where it is, m.</param>
/// <param name="Hole">The hole the pair goes through there; none for straight down, or where it lies under the board already.</param>
public sealed record TiePoint(string Id, PlanePoint At, PlanePoint? Hole = null);

/// <summary>A shared pair that can be cut anywhere to branch from it.</summary>
/// <param name="Id">The tap it leads to.</param>
/// <param name="Points">Its line from where it begins to the tap, m.</param>
public sealed record TieLine(string Id, ImmutableArray<PlanePoint> Points);

/// <summary>The shortest pair from one such thing to the new building.</summary>
/// <param name="Id">What it begins at.</param>
/// <param name="Metres">Length to cut, slack included, m.</param>
/// <param name="Points">Its line from where it begins to the new building, m.</param>
/// <param name="Wireways">The wireways it uses, in order.</param>
/// <param name="CutShare">Where on a line it begins, as a share of the line's length from its beginning; none at a point.</param>
public sealed record TieRun(string Id, double Metres, ImmutableArray<PlanePoint> Points, ImmutableArray<string> Wireways, double? CutShare = null);

/// <summary>The shortest pairs to a building that is added later, from everything its pair can begin at.</summary>
/// <remarks>
/// Dijkstra's method from the new building outwards. A line is met first at a junction of the wireways or where the new building
/// joins them, so the nearest such place on it is the nearest of all. Wireways that are full are kept out of.
/// </remarks>
public static class TieInGround
{
    /// <summary>Finds them.</summary>
    /// <param name="ways">The wireways with what they hold already; none for open ground.</param>
    /// <param name="added">The new building.</param>
    /// <param name="points">What its pair can begin at.</param>
    /// <param name="lines">Pairs it can branch from; their ends are no place to cut.</param>
    /// <param name="rules">The maker's rules.</param>
    /// <returns>One run for each that can be reached, the shortest first; of equal ones in the order given, points before lines.</returns>
    public static ImmutableArray<TieRun> Runs(
        ImmutableArray<WirewayLine> ways, RouteDemand added, ImmutableArray<TiePoint> points, ImmutableArray<TieLine> lines, RouteRules rules)
    {
        if (ways.IsEmpty && rules.Free.IsEmpty && rules.Around is { } around)
        {
            return [.. Round(new FreeRouter(around), added, points, lines, rules).OrderBy(r => r.Metres)];
        }

        if (ways.IsEmpty && rules.Free.IsEmpty)
        {
            return [.. points.Select(p => OnOpenGround(added, p, rules)).Concat(lines.Select(l => OnOpenGround(added, l, rules)).OfType<TieRun>()).OrderBy(r => r.Metres)];
        }

        ImmutableArray<WirewayLine> open = [.. ways.Where(w => w.CapacityPairs is not { } most || w.TakenPairs < most)];
        var full = ways.Except(open).Select(w => w.Id).ToHashSet(StringComparer.Ordinal);
        var runs = Along(ways, full, added, points, lines, rules);
        if (full.Count > 0 && (!open.IsEmpty || !rules.Free.IsEmpty))
        {
            // Past a full wireway to one that has room.
            runs = runs.Concat(Along(open, [], added, points, lines, rules));
        }

        var order = points.Select(p => p.Id).Concat(lines.Select(l => Cut(l.Id))).ToList();
        return
        [
            .. runs.GroupBy(r => r.CutShare is null ? r.Id : Cut(r.Id)).OrderBy(g => order.IndexOf(g.Key)).Select(g => g.MinBy(r => r.Metres)!).OrderBy(r => r.Metres),
        ];
    }

    // A tap and the pair that leads to it have one name.
    private static string Cut(string id) => $"to {id}";

    private static IEnumerable<TieRun> Along(
        ImmutableArray<WirewayLine> ways, HashSet<string> closed, RouteDemand added, ImmutableArray<TiePoint> points, ImmutableArray<TieLine> lines, RouteRules rules)
    {
        var hole = added.Hole ?? added.From;
        var graph = new WireGraph(ways, [hole, .. points.Select(p => p.Hole ?? p.At)], rules);
        var stub = graph.Stub(0);
        if (stub.Metres > rules.MostStubMetres)
        {
            yield break;
        }

        var tree = graph.ShortestFrom(0, closed);
        var last = added.From.DistanceTo(hole) + stub.Metres + rules.SlackMetres;
        ImmutableArray<PlanePoint> home = [.. stub.Points.Reverse(), added.From];
        for (var i = 0; i < points.Length; i++)
        {
            var from = points[i].Hole ?? points[i].At;
            var (line, used, metres) = tree.PathTo(graph.TerminalNode(i + 1));
            if (double.IsFinite(metres) && graph.Stub(i + 1) is var first && first.Metres <= rules.MostStubMetres)
            {
                yield return new TieRun(points[i].Id, points[i].At.DistanceTo(from) + first.Metres + metres + last, Line([points[i].At, .. first.Points, .. line, .. home]), used);
            }
        }

        foreach (var cut in lines)
        {
            var nodes = Enumerable.Range(0, graph.Nodes.Count).Select(n => (Node: n, Share: ShareAlong(cut.Points, graph.Nodes[n]))).Where(x => x.Share is not null).ToList();
            if (nodes.Count > 0 && nodes.MinBy(x => tree.PathTo(x.Node).Metres) is var (node, share) && tree.PathTo(node) is var (line, used, metres) && double.IsFinite(metres))
            {
                yield return new TieRun(cut.Id, metres + last, Line([.. line, .. home]), used, share);
            }
        }
    }

    private static IEnumerable<TieRun> Round(FreeRouter free, RouteDemand added, ImmutableArray<TiePoint> points, ImmutableArray<TieLine> lines, RouteRules rules)
    {
        var hole = added.Hole ?? added.From;
        var last = added.From.DistanceTo(hole) + rules.SlackMetres;
        foreach (var point in points)
        {
            var from = point.Hole ?? point.At;
            var run = free.Between(from, hole);
            if (!run.Points.IsEmpty)
            {
                yield return new TieRun(point.Id, point.At.DistanceTo(from) + run.Metres + last, Line([point.At, .. run.Points, added.From]), []);
            }
        }

        foreach (var line in lines)
        {
            var (run, _) = free.Nearest(hole, [.. line.Points.Zip(line.Points.Skip(1))]);
            if (!run.Points.IsEmpty && ShareAlong(line.Points, run.Points[^1]) is { } share)
            {
                yield return new TieRun(line.Id, run.Metres + last, Line([.. run.Points.Reverse(), added.From]), [], share);
            }
        }
    }

    private static TieRun OnOpenGround(RouteDemand added, TiePoint point, RouteRules rules) =>
        new(point.Id, (point.At.DistanceTo(added.From) * rules.DetourFactor) + rules.SlackMetres, [point.At, added.From], []);

    private static TieRun? OnOpenGround(RouteDemand added, TieLine line, RouteRules rules)
    {
        var near = line.Points.Zip(line.Points.Skip(1), (a, b) => added.From.NearestOn(a, b))
            .Select(p => (Point: p, Share: ShareAlong(line.Points, p)))
            .Where(x => x.Share is not null)
            .ToList();
        return near.Count == 0
            ? null
            : near.MinBy(x => x.Point.DistanceTo(added.From)) is var (point, share)
            ? new TieRun(line.Id, (point.DistanceTo(added.From) * rules.DetourFactor) + rules.SlackMetres, [point, added.From], [], share)
            : null;
    }

    // How far along a line a point of it lies; none off the line and at its ends.
    private static double? ShareAlong(ImmutableArray<PlanePoint> line, PlanePoint point)
    {
        var whole = line.Zip(line.Skip(1), (a, b) => a.DistanceTo(b)).Sum();
        var before = 0.0;
        for (var i = 1; i < line.Length; i++)
        {
            if (point.DistanceTo(point.NearestOn(line[i - 1], line[i])) < WireGraph.SameMetres)
            {
                var along = before + line[i - 1].DistanceTo(point);
                return along > WireGraph.SameMetres && along < whole - WireGraph.SameMetres ? along / whole : null;
            }

            before += line[i - 1].DistanceTo(line[i]);
        }

        return null;
    }

    private static ImmutableArray<PlanePoint> Line(ImmutableArray<PlanePoint> points) => [.. points.Where((p, i) => i == 0 || p.DistanceTo(points[i - 1]) > 1e-6)];
}
