using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>Gathers ports, chains and steps while a network is taken apart.</summary>
internal sealed class ChainList(Network network, PartKind[] kinds, List<SeriesPiece> series)
{
    private readonly List<(int From, int To)> _ports = [];
    private readonly List<(PartKind Kind, int Port, int Led, int WireStart)> _chains = [];
    private readonly List<int> _wires = [];
    private readonly List<PortStep> _steps = [];
    private readonly List<(int Element, int Port)> _others = [];

    // Those above come last; the plan turns them round.
    private readonly List<NodeStep> _nodeSteps = [];
    private readonly int[] _elementChain = new int[kinds.Length];
    private readonly double[] _elementSign = new double[kinds.Length];
    private readonly Dictionary<int, int> _ownPort = [];
    private readonly Stack<(Piece Piece, int Node)> _open = new();

    internal int NewPort(int from, int to)
    {
        _ports.Add((from, to));
        return _ports.Count - 1;
    }

    /// <summary>The port that a piece between two nodes is, made for it if need be.</summary>
    internal int PortOf(Piece piece, int from, int to)
    {
        if (piece.Kind == PieceKind.Port)
        {
            return piece.Index;
        }

        var port = NewPort(from, to);
        Put(port, piece);
        return port;
    }

    /// <summary>Ends a branch: nothing hangs on its far node but this piece.</summary>
    internal void EndAt(Piece piece, int from, int node)
    {
        var port = PortOf(piece, from, node);
        _steps.Add(new PortStep(PortStepKind.End, port, 1, -1, 0, -1, -1));
        _nodeSteps.Add(new NodeStep(node, from, _ports[port].To == node ? 1 : -1, -1, port));
    }

    /// <summary>Puts a piece into a port, as one chain.</summary>
    internal void Put(int port, Piece piece)
    {
        var (parts, nodes) = Laid(piece);
        var chain = _chains.Count;
        var live = parts.Count(p => !IsWire(p));
        var led = live == 1 ? parts.FindIndex(p => p.Kind == PieceKind.Element && kinds[p.Index] == PartKind.Led) : -1;
        _chains.Add((led >= 0 ? PartKind.Led : live == 0 ? PartKind.Wire : PartKind.Other, port, led >= 0 ? parts[led].Index : -1, _wires.Count));
        foreach (var part in parts.Where(p => p.Kind == PieceKind.Element))
        {
            _elementChain[part.Index] = chain;
            _elementSign[part.Index] = Sign(part);
        }

        _wires.AddRange(parts.Where(IsWire).Select(p => p.Index));
        if (led < 0 && live > 0)
        {
            Link(parts, port, chain);
        }

        WalkNodes(parts, nodes, live, port, chain);
    }

    internal PortPlan Plan(int[] coreNodes, int[] corePorts)
    {
        // Wires before chains with a port, LEDs before both.
        static int Rank(PartKind kind) => kind switch { PartKind.Led => 0, PartKind.Wire => 1, _ => 2 };
        var order = Enumerable.Range(0, _chains.Count).OrderBy(c => Rank(_chains[c].Kind)).ThenBy(c => _chains[c].Port).ToArray();
        var place = new int[order.Length];
        var wireStart = new int[order.Length + 1];
        var wires = new List<int>(_wires.Count);
        for (var i = 0; i < order.Length; i++)
        {
            place[order[i]] = i;
            var end = order[i] + 1 < _chains.Count ? _chains[order[i] + 1].WireStart : _wires.Count;
            for (var w = _chains[order[i]].WireStart; w < end; w++)
            {
                wires.Add(_wires[w]);
            }

            wireStart[i + 1] = wires.Count;
        }

        _nodeSteps.Reverse();
        return new PortPlan
        {
            Kinds = kinds,
            NodeCount = network.NodeCount,
            Ports = [.. _ports],
            ChainPort = [.. order.Select(c => _chains[c].Port)],
            LedChains = _chains.Count(c => c.Kind == PartKind.Led),
            WireChainsEnd = _chains.Count(c => c.Kind != PartKind.Other),
            LedElement = [.. order.Where(c => _chains[c].Kind == PartKind.Led).Select(c => _chains[c].Led)],
            ChainWireStart = wireStart,
            ChainWires = [.. wires],
            Others = [.. _others],
            Steps = [.. _steps.Select(s => s.Chain >= 0 ? s with { Chain = place[s.Chain] } : s)],
            CoreNodes = coreNodes,
            CorePorts = corePorts,
            NodeSteps = [.. _nodeSteps.Select(s => s.Wire >= 0 ? s with { Through = place[s.Through] } : s)],
            ElementChain = [.. _elementChain.Select(c => place[c])],
            ElementSign = _elementSign,
        };
    }

    private static double Sign(Piece piece) => piece.Flipped ? -1 : 1;

    private bool IsWire(Piece piece) => piece.Kind == PieceKind.Element && kinds[piece.Index] == PartKind.Wire;

    /// <summary>A piece laid out from its start to its end: its parts, and the nodes between them.</summary>
    private (List<Piece> Parts, List<int> Nodes) Laid(Piece piece)
    {
        var (parts, nodes) = (new List<Piece>(), new List<int>());
        _open.Push((piece, -1));
        while (_open.TryPop(out var next))
        {
            if (next.Node >= 0)
            {
                nodes.Add(next.Node);
            }
            else if (next.Piece.Kind != PieceKind.Series)
            {
                parts.Add(next.Piece);
            }
            else
            {
                var (first, node, second) = series[next.Piece.Index];
                _open.Push((next.Piece.Flipped ? first.Turned : second, -1));
                _open.Push((default, node));
                _open.Push((next.Piece.Flipped ? second.Turned : first, -1));
            }
        }

        return (parts, nodes);
    }

    private void Link(List<Piece> parts, int port, int chain)
    {
        var below = -1;
        var sign = 1.0;
        foreach (var part in parts.Where(p => !IsWire(p)).ToList())
        {
            var own = OwnPort(part);
            if (below < 0)
            {
                (below, sign) = (own, Sign(part));
                continue;
            }

            var joined = NewPort(-1, -1);
            _steps.Add(new PortStep(PortStepKind.Join, below, sign, own, Sign(part), joined, -1));
            (below, sign) = (joined, 1);
        }

        _steps.Add(new PortStep(PortStepKind.Link, below, sign, -1, 0, port, chain));
    }

    private int OwnPort(Piece part)
    {
        if (part.Kind == PieceKind.Port)
        {
            return part.Index;
        }

        var element = network.Elements[part.Index];
        var port = NewPort(element.A, element.B);
        _ownPort[part.Index] = port;
        if (kinds[part.Index] == PartKind.Led)
        {
            Put(port, part with { Flipped = false });
        }
        else
        {
            _others.Add((part.Index, port));
        }

        return port;
    }

    // Up to the last live part from the start, behind it from the end, so that only resistors need be walked where one part is live.
    private void WalkNodes(List<Piece> parts, List<int> nodes, int live, int port, int chain)
    {
        var (start, end) = _ports[port];
        var turn = live == 0 ? parts.Count - 1 : parts.FindLastIndex(p => !IsWire(p));
        for (var i = turn + 1; i < parts.Count; i++)
        {
            _nodeSteps.Add(new NodeStep(nodes[i - 1], i == parts.Count - 1 ? end : nodes[i], -1, parts[i].Index, chain));
        }

        for (var i = turn - 1; i >= 0; i--)
        {
            var from = i == 0 ? start : nodes[i - 1];
            _nodeSteps.Add(IsWire(parts[i])
                ? new NodeStep(nodes[i], from, 1, parts[i].Index, chain)
                : new NodeStep(nodes[i], from, Sign(parts[i]), -1, PortOfPart(parts[i])));
        }
    }

    // A part before the last live one of its chain was given a port when the chain was linked.
    private int PortOfPart(Piece part) => part.Kind == PieceKind.Port ? part.Index : _ownPort[part.Index];
}
