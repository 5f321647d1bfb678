namespace Duskwright.Harness.Trunks;

/// <summary>Greatest flow from one junction to another over arcs with room, and the cut that limits it (E. A. Dinic, 1970).</summary>
internal sealed class ArcFlow
{
    private readonly int[] _heads;
    private readonly double[] _room;
    private readonly List<int>[] _out;
    private readonly double[] _full;

    /// <summary>Each arc gets a twin for flow sent back.</summary>
    internal ArcFlow(int junctions, IReadOnlyList<(int Tail, int Head, double Room)> arcs)
    {
        _heads = new int[2 * arcs.Count];
        _full = new double[2 * arcs.Count];
        _room = new double[2 * arcs.Count];
        _out = [.. Enumerable.Range(0, junctions).Select(_ => new List<int>())];
        for (var i = 0; i < arcs.Count; i++)
        {
            (_heads[2 * i], _heads[(2 * i) + 1], _full[2 * i]) = (arcs[i].Head, arcs[i].Tail, arcs[i].Room);
            _out[arcs[i].Tail].Add(2 * i);
            _out[arcs[i].Head].Add((2 * i) + 1);
        }
    }

    /// <summary>The flow, and which junctions lie on the sink's side of the cut nearest to the sink.</summary>
    internal (double Flow, bool[] SinkSide) Between(int source, int sink, double enough)
    {
        _full.CopyTo(_room, 0);
        var flow = 0.0;
        while (flow < enough)
        {
            var level = Levels(source);
            if (level[sink] < 0)
            {
                break;
            }

            var next = new int[_out.Length];
            while (flow < enough && Push(source, sink, double.PositiveInfinity, level, next) is > 1e-12 and var pushed)
            {
                flow += pushed;
            }
        }

        return (flow, SinkSide(sink));
    }

    private int[] Levels(int source)
    {
        var level = Enumerable.Repeat(-1, _out.Length).ToArray();
        var queue = new Queue<int>([source]);
        level[source] = 0;
        while (queue.TryDequeue(out var at))
        {
            foreach (var arc in _out[at])
            {
                if (_room[arc] > 1e-9 && level[_heads[arc]] < 0)
                {
                    level[_heads[arc]] = level[at] + 1;
                    queue.Enqueue(_heads[arc]);
                }
            }
        }

        return level;
    }

    private double Push(int at, int sink, double most, int[] level, int[] next)
    {
        if (at == sink)
        {
            return most;
        }

        for (; next[at] < _out[at].Count; next[at]++)
        {
            var arc = _out[at][next[at]];
            if (_room[arc] > 1e-9 && level[_heads[arc]] == level[at] + 1
                && Push(_heads[arc], sink, Math.Min(most, _room[arc]), level, next) is > 0 and var pushed)
            {
                _room[arc] -= pushed;
                _room[arc ^ 1] += pushed;
                return pushed;
            }
        }

        return 0;
    }

    private bool[] SinkSide(int sink)
    {
        var side = new bool[_out.Length];
        var stack = new Stack<int>([sink]);
        side[sink] = true;
        while (stack.TryPop(out var at))
        {
            foreach (var arc in _out[at])
            {
                if (_room[arc ^ 1] > 1e-9 && !side[_heads[arc]])
                {
                    side[_heads[arc]] = true;
                    stack.Push(_heads[arc]);
                }
            }
        }

        return side;
    }
}
