namespace Duskwright.Circuits.Solving;

/// <summary>The nodes that are left when all trees are taken in: a mesh of ports, solved by a sparse factorisation.</summary>
internal sealed class CoreNodes
{
    private readonly SparseLdl _matrix;
    private readonly int[] _ports;
    private readonly int[] _from;
    private readonly int[] _to;
    private readonly int[] _below;
    private readonly double[] _step;
    private readonly double[] _volts;
    private readonly int[] _nodes;

    internal CoreNodes(PortPlan plan)
    {
        _nodes = plan.CoreNodes;
        _ports = plan.CorePorts;
        var place = new Dictionary<int, int> { [0] = -1 };
        for (var i = 0; i < _nodes.Length; i++)
        {
            place[_nodes[i]] = i;
        }

        _from = [.. _ports.Select(p => place[plan.Ports[p].From])];
        _to = [.. _ports.Select(p => place[plan.Ports[p].To])];
        _matrix = new SparseLdl(_nodes.Length, [.. _from.Zip(_to).Where(e => e.First >= 0 && e.Second >= 0)]);
        _below = [.. _from.Zip(_to).Select(e => e.First >= 0 && e.Second >= 0 ? _matrix.IndexOf(e.First, e.Second) : -1)];
        _step = new double[_nodes.Length];
        _volts = new double[_nodes.Length];
    }

    /// <summary>Starts from nothing, or from the voltages of a solve nearby.</summary>
    internal void Start(ReadOnlySpan<double> nodeVolts)
    {
        for (var i = 0; i < _nodes.Length; i++)
        {
            _volts[i] = nodeVolts.IsEmpty ? 0 : nodeVolts[_nodes[i]];
        }
    }

    /// <summary>Solves the core for the ports' conductances and currents and sets the ports' voltages. False where a part floats.</summary>
    internal bool Solve(double[] portSiemens, double[] portAmps, double[] portVolts)
    {
        _matrix.Clear();
        Array.Clear(_step);
        for (var i = 0; i < _ports.Length; i++)
        {
            var (from, to, siemens) = (_from[i], _to[i], portSiemens[_ports[i]]);
            var amps = portAmps[_ports[i]] + (siemens * (At(from) - At(to)));
            if (from >= 0)
            {
                _matrix.AddDiagonal(from, siemens);
                _step[from] -= amps;
            }

            if (to >= 0)
            {
                _matrix.AddDiagonal(to, siemens);
                _step[to] += amps;
            }

            if (_below[i] >= 0)
            {
                _matrix.AddBelow(_below[i], -siemens);
            }
        }

        if (!_matrix.Factorise())
        {
            return false;
        }

        _matrix.Solve(_step);
        for (var i = 0; i < _volts.Length; i++)
        {
            _volts[i] += _step[i];
        }

        for (var i = 0; i < _ports.Length; i++)
        {
            portVolts[_ports[i]] = At(_from[i]) - At(_to[i]);
        }

        return true;
    }

    /// <summary>Writes the core's voltages among those of all nodes.</summary>
    internal void Read(double[] nodeVolts)
    {
        for (var i = 0; i < _nodes.Length; i++)
        {
            nodeVolts[_nodes[i]] = _volts[i];
        }
    }

    private double At(int place) => place < 0 ? 0 : _volts[place];
}
