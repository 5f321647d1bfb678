using System.Collections.Immutable;
using Duskwright.Harness.Routes;
using Duskwright.Harness.Trunks;

namespace Duskwright.Harness.Feeds;

/// <summary>Where the pairs of one switch can run: the wireways with the bank and its buildings joined to them, or open ground where none is drawn.</summary>
internal sealed class FeedGround
{
    private readonly ImmutableArray<PlanePoint> _places;
    private readonly WireGraph? _graph;
    private readonly FreeRouter? _free;
    private readonly ShortestTree[] _trees;
    private readonly ImmutableArray<RouteDemand> _demands;

    internal FeedGround(ImmutableArray<WirewayLine> ways, PlanePoint bank, ImmutableArray<RouteDemand> demands, RouteRules rules)
    {
        (_demands, Rules) = (demands, rules);
        _places = [bank, .. demands.Select(d => d.Hole ?? d.From)];
        _graph = ways.IsEmpty && rules.Free.IsEmpty ? null : new WireGraph(ways, _places, rules);
        _free = _graph is null && rules.Around is { } around ? new FreeRouter(around) : null;
        _trees = _graph is null ? [] : [.. _places.Select((_, i) => _graph.ShortestFrom(i))];
    }

    internal RouteRules Rules { get; }

    internal int Places => _places.Length;

    internal string Building(int place) => _demands[place - 1].Building;

    /// <summary>Length from a place to the wireway it joins, through its hole, m; 0 on open ground.</summary>
    internal double Stub(int place) =>
        _graph is null ? 0 : _graph.Stub(place).Metres + At(place).DistanceTo(_places[place]);

    /// <summary>A pair from one place to another with its stubs, without slack.</summary>
    internal (double Metres, ImmutableArray<PlanePoint> Points, ImmutableArray<string> Wireways) Between(int from, int to)
    {
        if (_free?.Between(_places[from], _places[to]) is { } run)
        {
            return (At(from).DistanceTo(_places[from]) + run.Metres + At(to).DistanceTo(_places[to]), Line([At(from), .. run.Points, At(to)]), []);
        }

        if (_graph is null)
        {
            return (_places[from].DistanceTo(_places[to]) * Rules.DetourFactor, [At(from), At(to)], []);
        }

        var (points, ways, metres) = _trees[from].PathTo(_graph.TerminalNode(to));
        return (metres + Stub(from) + Stub(to), Line([.. Out(from), .. points.Reverse(), .. Out(to).Reverse()]), [.. ways.Reverse()]);
    }

    /// <summary>The wireways as a net, its junctions' points, and the junction of each place; none on open ground.</summary>
    internal (WireNet Net, IReadOnlyList<PlanePoint> Points, IReadOnlyList<string> Ways, ImmutableArray<int> Terminals)? Net()
    {
        if (_graph is null)
        {
            return null;
        }

        var (net, ways) = _graph.Net();
        return (net, _graph.Nodes, ways, [.. Enumerable.Range(0, Places).Select(_graph.TerminalNode)]);
    }

    /// <summary>The line from a place to the wireway it joins.</summary>
    internal IEnumerable<PlanePoint> Out(int place) => _graph is null ? [At(place)] : [At(place), .. _graph.Stub(place).Points];

    internal static ImmutableArray<PlanePoint> Line(ImmutableArray<PlanePoint> points) =>
        [.. points.Where((p, i) => i == 0 || p.DistanceTo(points[i - 1]) > 1e-6)];

    private PlanePoint At(int place) => place == 0 ? _places[0] : _demands[place - 1].From;
}
