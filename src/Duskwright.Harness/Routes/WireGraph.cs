using System.Collections.Immutable;
using Duskwright.Harness.Trunks;

namespace Duskwright.Harness.Routes;

/// <summary>Wireways as nodes and pieces; every terminal joins at the nearest point of any wireway or free area. In a free area all nodes that see one another are joined.</summary>
internal sealed class WireGraph
{
    // Points nearer than this are one point: half a millimetre, the width of a pencil line.
    internal const double SameMetres = 0.0005;

    // The edge of a free area is met and joined as a wireway is; what runs across the area is in none.
    private static readonly WirewayLine Edge = new("", []);

    private readonly List<PlanePoint> _nodes = [];
    private readonly List<List<(int To, double Metres, string Way)>> _pieces = [];
    private readonly List<int> _terminals = [];
    private readonly List<FreeRun> _stubs = [];

    internal WireGraph(ImmutableArray<WirewayLine> ways, ImmutableArray<PlanePoint> terminals, RouteRules rules)
    {
        var ground = rules.Free.IsEmpty ? null : new FreeGround(rules);
        List<Segment> drawn = [.. ways.SelectMany(w => w.Points.Zip(w.Points.Skip(1), (a, b) => new Segment(w, a, b)))];
        List<Segment> segments = [.. drawn, .. ground?.Edges.Select(e => new Segment(Edge, e.From, e.To)) ?? []];
        CutWhereTheyMeet(segments);
        var free = rules.Around is null ? null : new FreeRouter(rules.Around);
        foreach (var terminal in terminals)
        {
            _stubs.Add(ground?.Holds(terminal) == true ? Straight(terminal) : Joined(terminal, segments, free));
        }

        foreach (var segment in segments)
        {
            // The cuts of an area's edge are nodes too, from which the area is crossed; no wire runs along the edge itself.
            var along = segment.Cuts.OrderBy(segment.From.DistanceTo).Select(NodeAt).Distinct().ToList();
            for (var k = 1; k < along.Count && segment.Way != Edge; k++)
            {
                Join(along[k - 1], along[k], Stretch(segment.Way), segment.Way.Id);
            }
        }

        foreach (var (from, to) in ground?.Seen([.. _nodes]) ?? [])
        {
            Join(from, to, 1, Edge.Id);
        }
    }

    internal IReadOnlyList<PlanePoint> Nodes => _nodes;

    /// <summary>The run from a terminal to the wireway it joins, round obstacles; none where they shut it in.</summary>
    internal FreeRun Stub(int terminal) => _stubs[terminal];

    internal int TerminalNode(int terminal) => _terminals[terminal];

    /// <summary>Dijkstra's shortest ways from one terminal to everywhere, out of closed wireways.</summary>
    internal ShortestTree ShortestFrom(int terminal, IReadOnlyCollection<string>? closed = null)
    {
        var metres = Enumerable.Repeat(double.PositiveInfinity, _nodes.Count).ToArray();
        var towards = new (int Node, string Way)[_nodes.Count];
        var queue = new PriorityQueue<int, (double, int)>();
        metres[_terminals[terminal]] = 0;
        queue.Enqueue(_terminals[terminal], (0, _terminals[terminal]));
        while (queue.TryDequeue(out var node, out var reached))
        {
            if (reached.Item1 > metres[node])
            {
                continue;
            }

            foreach (var (to, length, way) in _pieces[node])
            {
                if (metres[node] + length < metres[to] && closed?.Contains(way) != true)
                {
                    metres[to] = metres[node] + length;
                    towards[to] = (node, way);
                    queue.Enqueue(to, (metres[to], to));
                }
            }
        }

        return new ShortestTree(_nodes, _terminals[terminal], metres, towards);
    }

    /// <summary>The pieces of one wireway, each from either end.</summary>
    internal IEnumerable<(int From, int To, double Metres)> PiecesOf(string way) =>
        _pieces.SelectMany((list, from) => list.Where(p => p.Way == way).Select(p => (from, p.To, p.Metres)));

    /// <summary>Nodes and pieces as a net for trunks, and the wireway of each piece.</summary>
    internal (WireNet Net, IReadOnlyList<string> Ways) Net()
    {
        var pieces = _pieces.SelectMany((list, from) => list.Where(p => from < p.To).Select(p => (Piece: new NetPiece(from, p.To, p.Metres), p.Way))).ToList();
        return (new WireNet(_nodes.Count, [.. pieces.Select(p => p.Piece)]), [.. pieces.Select(p => p.Way)]);
    }

    private static void CutWhereTheyMeet(List<Segment> segments)
    {
        for (var i = 0; i < segments.Count; i++)
        {
            for (var j = i + 1; j < segments.Count; j++)
            {
                foreach (var point in Meetings(segments[i].From, segments[i].To, segments[j].From, segments[j].To))
                {
                    segments[i].Cuts.Add(point);
                    segments[j].Cuts.Add(point);
                }
            }
        }
    }

    // A terminal within a free area is a node itself, or the one so near that it is the same.
    private FreeRun Straight(PlanePoint terminal)
    {
        _terminals.Add(NodeAt(terminal));
        var node = _nodes[_terminals[^1]];
        return new FreeRun([terminal, node], terminal.DistanceTo(node));
    }

    // The run from a terminal to the nearest segment, which is cut there.
    private FreeRun Joined(PlanePoint terminal, List<Segment> segments, FreeRouter? free)
    {
        var (segment, join) = segments.Select(s => (s, Point: terminal.NearestOn(s.From, s.To))).MinBy(x => terminal.DistanceTo(x.Point));
        var run = FreeRun.None;
        if (free?.Nearest(terminal, [.. segments.Select(s => (s.From, s.To))]) is ({ Points.IsEmpty: false } round, var piece))
        {
            (run, segment, join) = (round, segments[piece], round.Points[^1]);
        }

        // A join so near to another is the same one, and the run ends there.
        segment.Cuts.Add(join);
        _terminals.Add(NodeAt(join));
        var node = _nodes[_terminals[^1]];
        return free is null
            ? new FreeRun([terminal, node], terminal.DistanceTo(node))
            : run.Points.IsEmpty
            ? run
            : new FreeRun([.. run.Points, node], run.Metres + join.DistanceTo(node));
    }

    // A wireway climbs evenly over its length.
    private static double Stretch(WirewayLine way)
    {
        var metres = way.Points.Zip(way.Points.Skip(1), (a, b) => a.DistanceTo(b)).Sum();
        return metres > 0 ? 1 + (way.ClimbMetres / metres) : 1;
    }

    private void Join(int from, int to, double stretch, string way)
    {
        var metres = _nodes[from].DistanceTo(_nodes[to]) * stretch;
        _pieces[from].Add((to, metres, way));
        _pieces[to].Add((from, metres, way));
    }

    private int NodeAt(PlanePoint point)
    {
        var node = _nodes.FindIndex(n => n.DistanceTo(point) < SameMetres);
        if (node >= 0)
        {
            return node;
        }

        _nodes.Add(point);
        _pieces.Add([]);
        return _nodes.Count - 1;
    }

    // Where two pieces cross, or where an end of one lies on the other.
    private static IEnumerable<PlanePoint> Meetings(PlanePoint a, PlanePoint b, PlanePoint c, PlanePoint d)
    {
        foreach (var (point, from, to) in new[] { (a, c, d), (b, c, d), (c, a, b), (d, a, b) })
        {
            if (point.DistanceTo(point.NearestOn(from, to)) < SameMetres)
            {
                yield return point;
            }
        }

        var cross = ((b.X - a.X) * (d.Y - c.Y)) - ((b.Y - a.Y) * (d.X - c.X));
        if (cross != 0)
        {
            var s = (((c.X - a.X) * (d.Y - c.Y)) - ((c.Y - a.Y) * (d.X - c.X))) / cross;
            var t = (((c.X - a.X) * (b.Y - a.Y)) - ((c.Y - a.Y) * (b.X - a.X))) / cross;
            if (s is > 0 and < 1 && t is > 0 and < 1)
            {
                yield return new PlanePoint(a.X + (s * (b.X - a.X)), a.Y + (s * (b.Y - a.Y)));
            }
        }
    }

    // One straight stretch, with its ends and all places where another meets it.
    private sealed record Segment(WirewayLine Way, PlanePoint From, PlanePoint To)
    {
        internal List<PlanePoint> Cuts { get; } = [From, To];
    }
}
