using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>Takes a network apart: parts side by side become one, a node with two neighbours joins two chains to one, a node with one neighbour ends a branch.</summary>
/// <remarks>
/// Series-parallel reduction (Duffin, Journal of Mathematical Analysis and Applications 10 (1965) 303); in time linear in the parts, trees
/// with their returns go to the last node.
/// </remarks>
internal sealed class SeriesParallel
{
    private readonly int[] _degree;
    private readonly int[] _firstHalf;
    private readonly List<(int From, int To, Piece Piece)> _edges;
    private readonly List<(int Before, int After)> _halves;
    private readonly Dictionary<(int Low, int High), int> _between;
    private readonly List<SeriesPiece> _series = [];
    private readonly Queue<int> _slight = [];
    private readonly bool[] _gone;
    private readonly ChainList _chains;

    private SeriesParallel(Network network, PartKind[] kinds)
    {
        var count = network.NodeCount;
        _degree = new int[count];
        _firstHalf = new int[count];
        Array.Fill(_firstHalf, -1);
        _gone = new bool[count];
        _edges = new(2 * network.Elements.Length);
        _halves = new(4 * network.Elements.Length);
        _between = new(network.Elements.Length);
        _chains = new ChainList(network, kinds, _series);
    }

    /// <summary>Works out the plan of a network that hangs together.</summary>
    internal static PortPlan Of(Network network)
    {
        var kinds = new PartKind[network.Elements.Length];
        for (var i = 0; i < kinds.Length; i++)
        {
            kinds[i] = PartKinds.Of(network.Elements[i]);
        }

        return Of(network, kinds);
    }

    /// <summary>Works out the plan of a network that hangs together, in which other parts of the kinds given may stand.</summary>
    internal static PortPlan Of(Network network, PartKind[] kinds)
    {
        var reduction = new SeriesParallel(network, kinds);
        for (var i = 0; i < kinds.Length; i++)
        {
            reduction.Add(network.Elements[i].A, network.Elements[i].B, new Piece(PieceKind.Element, i, false));
        }

        for (var node = 1; node < network.NodeCount; node++)
        {
            reduction.Notice(node);
        }

        while (reduction._slight.TryDequeue(out var node))
        {
            reduction.TakeOut(node);
        }

        return reduction.Finish(network);
    }

    private void Notice(int node)
    {
        if (node > 0 && _degree[node] is 1 or 2)
        {
            _slight.Enqueue(node);
        }
    }

    private void TakeOut(int node)
    {
        if (node == 0 || _gone[node] || _degree[node] is 0 or > 2)
        {
            return;
        }

        _gone[node] = true;
        var first = _firstHalf[node] / 2;
        if (_degree[node] == 1)
        {
            var (from, _, piece) = Towards(first, node);
            Remove(first);
            _chains.EndAt(piece, from, node);
            Notice(from);
            return;
        }

        var second = _halves[_firstHalf[node]].After / 2;
        var (start, _, before) = Towards(first, node);
        var (end, _, behind) = Towards(second, node);
        Remove(first);
        Remove(second);
        _series.Add(new SeriesPiece(before, node, behind.Turned));
        Add(start, end, new Piece(PieceKind.Series, _series.Count - 1, false));
        Notice(start);
        Notice(end);
    }

    /// <summary>An edge read so that it leads to a node.</summary>
    private (int From, int To, Piece Piece) Towards(int edge, int node)
    {
        var (from, to, piece) = _edges[edge];
        return to == node ? (from, to, piece) : (to, from, piece.Turned);
    }

    private void Add(int from, int to, Piece piece)
    {
        var key = from < to ? (from, to) : (to, from);
        if (_between.TryGetValue(key, out var edge))
        {
            var (edgeFrom, edgeTo, beside) = _edges[edge];
            if (beside.Kind != PieceKind.Port)
            {
                var port = _chains.NewPort(edgeFrom, edgeTo);
                _chains.Put(port, beside);
                beside = new Piece(PieceKind.Port, port, false);
                _edges[edge] = (edgeFrom, edgeTo, beside);
            }

            var along = (from == edgeFrom) != beside.Flipped;
            _chains.Put(beside.Index, along ? piece : piece.Turned);
            return;
        }

        _between.Add(key, _edges.Count);
        Enlist(from, _halves.Count);
        Enlist(to, _halves.Count);
        _edges.Add((from, to, piece));
    }

    private void Enlist(int node, int half)
    {
        var next = _firstHalf[node];
        _halves.Add((-1, next));
        if (next >= 0)
        {
            _halves[next] = (half, _halves[next].After);
        }

        _firstHalf[node] = half;
        _degree[node]++;
    }

    private void Remove(int edge)
    {
        var (from, to, _) = _edges[edge];
        _between.Remove(from < to ? (from, to) : (to, from));
        Delist(from, 2 * edge);
        Delist(to, (2 * edge) + 1);
    }

    private void Delist(int node, int half)
    {
        var (before, after) = _halves[half];
        if (before >= 0)
        {
            _halves[before] = (_halves[before].Before, after);
        }
        else
        {
            _firstHalf[node] = after;
        }

        if (after >= 0)
        {
            _halves[after] = (before, _halves[after].After);
        }

        _degree[node]--;
    }

    private PortPlan Finish(Network network)
    {
        List<int> nodes = [];
        List<int> corePorts = [];
        for (var node = 1; node < network.NodeCount; node++)
        {
            if (!_gone[node])
            {
                nodes.Add(node);
            }
        }

        foreach (var edge in _between.Values)
        {
            var (from, to, piece) = _edges[edge];
            corePorts.Add(_chains.PortOf(piece, from, to));
        }

        return _chains.Plan([.. nodes], [.. corePorts]);
    }
}
