using System.Collections.Immutable;
using Duskwright.Harness.Routes;
using Duskwright.Harness.Trunks;

namespace Duskwright.Harness.Feeds;

/// <summary>A trunk found on the wireways cut into the pairs a maker lays: from the bank to a tap, from tap to tap, from a tap into a house. A corner is no joint.</summary>
internal sealed class TrunkLayout
{
    private readonly FeedGround _ground;
    private readonly IReadOnlyList<PlanePoint> _points;
    private readonly IReadOnlyList<string> _ways;
    private readonly ImmutableArray<int> _terminals;
    private readonly Dictionary<int, List<(int To, int Piece, double Metres)>> _around = [];
    private readonly ImmutableArray<FeedPiece>.Builder _pieces = ImmutableArray.CreateBuilder<FeedPiece>();
    private int _junctions;

    internal TrunkLayout(FeedGround ground, WireNet net, IReadOnlyList<PlanePoint> points, IReadOnlyList<string> ways, ImmutableArray<int> terminals, ImmutableArray<int> trunk)
    {
        (_ground, _points, _ways, _terminals, _junctions) = (ground, points, ways, terminals, ground.Places);
        foreach (var piece in trunk)
        {
            var (from, to, metres) = net.Pieces[piece];
            Around(from).Add((to, piece, metres));
            Around(to).Add((from, piece, metres));
        }
    }

    internal ImmutableArray<FeedPiece> Pieces()
    {
        // Buildings that join where the bank does have their own pairs.
        foreach (var place in PlacesAt(_terminals[0]))
        {
            Lay(0, place, _ground.Stub(0) + _ground.Stub(place), [.. _ground.Out(0), .. _ground.Out(place).Reverse()], []);
        }

        foreach (var first in Around(_terminals[0]))
        {
            Follow(0, _ground.Stub(0), [.. _ground.Out(0)], _terminals[0], first);
        }

        return _pieces.ToImmutable();
    }

    // Along the trunk to the next tap, fork or end.
    private void Follow(int junction, double metres, ImmutableArray<PlanePoint> line, int node, (int To, int Piece, double Metres) next)
    {
        var used = new List<string>();
        List<(int To, int Piece, double Metres)> onward;
        while (true)
        {
            metres += next.Metres;
            line = line.Add(_points[next.To]);
            if (_ways[next.Piece].Length > 0 && (used.Count == 0 || used[^1] != _ways[next.Piece]))
            {
                used.Add(_ways[next.Piece]);
            }

            node = next.To;
            onward = [.. Around(node).Where(n => n.Piece != next.Piece)];
            if (onward.Count != 1 || PlacesAt(node).Any())
            {
                break;
            }

            next = onward[0];
        }

        var here = PlacesAt(node).ToList();
        if (onward.Count == 0 && here.Count == 1)
        {
            Lay(junction, here[0], metres + _ground.Stub(here[0]), [.. line, .. _ground.Out(here[0]).Reverse()], [.. used]);
            return;
        }

        var tap = _junctions++;
        Lay(junction, tap, metres, line, [.. used]);
        foreach (var place in here)
        {
            Lay(tap, place, _ground.Stub(place), [.. _ground.Out(place).Reverse()], []);
        }

        foreach (var fork in onward)
        {
            Follow(tap, 0, [_points[node]], node, fork);
        }
    }

    // Every pair has the slack for its joints; a tap needs it as a house does.
    private void Lay(int from, int to, double metres, ImmutableArray<PlanePoint> line, ImmutableArray<string> used) =>
        _pieces.Add(new FeedPiece(from, to, metres + _ground.Rules.SlackMetres, FeedGround.Line(line), used));

    private IEnumerable<int> PlacesAt(int node) => Enumerable.Range(1, _terminals.Length - 1).Where(p => _terminals[p] == node);

    private List<(int To, int Piece, double Metres)> Around(int node)
    {
        if (!_around.TryGetValue(node, out var around))
        {
            _around[node] = around = [];
        }

        return around;
    }
}
