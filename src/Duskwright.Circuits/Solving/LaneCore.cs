using System.Numerics;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>The cores of several networks of one structure, each factorised on its own.</summary>
internal sealed class LaneCore
{
    private readonly CoreNodes[] _cores;
    private readonly int[] _ports;
    private readonly int[] _nodes;
    private readonly double[] _siemens;
    private readonly double[] _amps;
    private readonly double[] _volts;
    private readonly double[] _nodeVolts;
    private readonly double[] _start;

    internal LaneCore(PortPlan plan)
    {
        _cores = [.. Enumerable.Range(0, LaneValues.Lanes).Select(_ => new CoreNodes(plan))];
        _ports = plan.CorePorts;
        _nodes = plan.CoreNodes;
        _siemens = new double[plan.Ports.Length];
        _amps = new double[plan.Ports.Length];
        _volts = new double[plan.Ports.Length];
        _nodeVolts = new double[plan.NodeCount];
        _start = new double[plan.NodeCount];
    }

    /// <summary>Takes the voltages from which every lane starts.</summary>
    internal void Prepare(ReadOnlySpan<double> nodeVolts) => nodeVolts.CopyTo(_start);

    /// <summary>Starts every lane.</summary>
    internal void Start()
    {
        foreach (var core in _cores)
        {
            core.Start(_start);
        }
    }

    /// <summary>Solves the cores for the ports' conductances and currents and sets the ports' voltages. False where a part floats.</summary>
    internal bool Solve(Vector<double>[] portSiemens, Vector<double>[] portAmps, Vector<double>[] portVolts)
    {
        for (var lane = 0; lane < _cores.Length; lane++)
        {
            foreach (var port in _ports)
            {
                (_siemens[port], _amps[port]) = (portSiemens[port][lane], portAmps[port][lane]);
            }

            if (!_cores[lane].Solve(_siemens, _amps, _volts))
            {
                return false;
            }

            foreach (var port in _ports)
            {
                portVolts[port] = portVolts[port].WithElement(lane, _volts[port]);
            }
        }

        return true;
    }

    /// <summary>Writes the cores' voltages among those of all nodes.</summary>
    internal void Read(Vector<double>[] nodeVolts)
    {
        for (var lane = 0; lane < _cores.Length; lane++)
        {
            _cores[lane].Read(_nodeVolts);
            foreach (var node in _nodes)
            {
                nodeVolts[node] = nodeVolts[node].WithElement(lane, _nodeVolts[node]);
            }
        }
    }
}
