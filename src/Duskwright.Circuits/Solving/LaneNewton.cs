using System.Numerics;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>Newton's method of <see cref="PortNewton"/> on several networks of one structure at once: one network a lane of the vector unit.</summary>
/// <remarks>Every lane takes part until the last has settled; a step more harms none. Nothing is allocated in a run.</remarks>
internal sealed class LaneNewton
{
    private const int MostTurns = 40;

    private readonly PortPlan _plan;
    private readonly LaneLeds _leds;
    private readonly LaneOthers _others;
    private readonly LaneCore? _core;
    private readonly LaneValues _values;
    private readonly Vector<double>[] _chainOhms;
    private readonly Vector<double>[] _wireSiemens;
    private readonly Vector<double>[] _siemens;
    private readonly Vector<double>[] _amps;
    private readonly Vector<double>[] _volts;
    private readonly Vector<double>[] _start;
    private readonly Vector<double>[] _chainAmps;

    internal LaneNewton(PortPlan plan, LaneValues values)
    {
        _plan = plan;
        _values = values;
        _leds = new LaneLeds(plan);
        _others = new LaneOthers(plan);
        _core = plan.CoreNodes.Length > 0 ? new LaneCore(plan) : null;
        _chainOhms = new Vector<double>[plan.ChainPort.Length];
        _chainAmps = new Vector<double>[plan.ChainPort.Length];
        _wireSiemens = new Vector<double>[plan.Ports.Length];
        _siemens = new Vector<double>[plan.Ports.Length];
        _amps = new Vector<double>[plan.Ports.Length];
        _volts = new Vector<double>[plan.Ports.Length];
        _start = new Vector<double>[plan.Ports.Length];
        NodeVolts = new Vector<double>[plan.NodeCount];
        ElementAmps = new Vector<double>[plan.Kinds.Length];
    }

    /// <summary>Voltage of each node after <see cref="Read"/>, V.</summary>
    internal Vector<double>[] NodeVolts { get; }

    /// <summary>Current of each element from its first end of the plan to its second after <see cref="Read"/>, A.</summary>
    internal Vector<double>[] ElementAmps { get; }

    /// <summary>Takes all numbers.</summary>
    internal void Load()
    {
        for (var chain = 0; chain < _chainOhms.Length; chain++)
        {
            LoadChain(chain);
        }

        GatherWires();
    }

    /// <summary>Takes the numbers of the chains that some elements are in.</summary>
    internal void Load(IEnumerable<int> elements)
    {
        foreach (var element in elements)
        {
            LoadChain(_plan.ElementChain[element]);
        }

        GatherWires();
    }

    /// <summary>Takes the voltages from which all runs start, which belong to the numbers of now.</summary>
    internal void Prepare(ReadOnlySpan<double> nodeVolts)
    {
        _core?.Prepare(nodeVolts);
        for (var port = 0; port < _volts.Length; port++)
        {
            var (from, to) = _plan.Ports[port];
            _start[port] = new Vector<double>(from >= 0 ? nodeVolts[from] - nodeVolts[to] : 0);
        }

        _leds.Prepare(_start);
    }

    /// <summary>Runs from the start. False where some lane does not settle.</summary>
    internal bool Run()
    {
        Array.Copy(_start, _volts, _volts.Length);
        _leds.Start();
        _core?.Start();
        for (var turn = 0; turn < MostTurns; turn++)
        {
            Array.Copy(_wireSiemens, _siemens, _siemens.Length);
            Array.Clear(_amps);
            _leds.Straighten(_volts, _siemens, _amps);
            _others.Straighten(_volts, _values, _siemens, _amps);
            GoUp();
            if (_core?.Solve(_siemens, _amps, _volts) == false)
            {
                return false;
            }

            GoDown();
            if (_leds.StraightAt(_volts) && _others.StraightAt(_volts, _values))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Works out currents and node voltages of the last run.</summary>
    internal void Read()
    {
        _leds.Read(_volts, _chainAmps);
        for (var chain = _plan.LedChains; chain < _plan.WireChainsEnd; chain++)
        {
            _chainAmps[chain] = _volts[_plan.ChainPort[chain]] / _chainOhms[chain];
        }

        foreach (ref readonly var step in _plan.Steps.AsSpan())
        {
            if (step.Kind == PortStepKind.Link)
            {
                _chainAmps[step.Chain] = step.Sign * ((_siemens[step.Port] * _volts[step.Port]) + _amps[step.Port]);
            }
        }

        for (var i = 0; i < ElementAmps.Length; i++)
        {
            ElementAmps[i] = _plan.ElementSign[i] * _chainAmps[_plan.ElementChain[i]];
        }

        _core?.Read(NodeVolts);
        foreach (ref readonly var step in _plan.NodeSteps.AsSpan())
        {
            var drop = step.Wire >= 0 ? _chainAmps[step.Through] * _values.Ohms[step.Wire] : _volts[step.Through];
            NodeVolts[step.Node] = NodeVolts[step.From] - (step.Sign * drop);
        }
    }

    private void LoadChain(int chain)
    {
        var ohms = Vector<double>.Zero;
        for (var i = _plan.ChainWireStart[chain]; i < _plan.ChainWireStart[chain + 1]; i++)
        {
            ohms += _values.Ohms[_plan.ChainWires[i]];
        }

        _chainOhms[chain] = ohms;
        if (chain < _plan.LedChains)
        {
            _leds.Load(chain, _values, ohms);
        }
    }

    private void GatherWires()
    {
        Array.Clear(_wireSiemens);
        for (var chain = _plan.LedChains; chain < _plan.WireChainsEnd; chain++)
        {
            _wireSiemens[_plan.ChainPort[chain]] += Vector<double>.One / _chainOhms[chain];
        }
    }

    private void GoUp()
    {
        foreach (ref readonly var step in _plan.Steps.AsSpan())
        {
            var (siemens, amps) = (_siemens[step.Port], _amps[step.Port]);
            switch (step.Kind)
            {
                case PortStepKind.Link:
                    var share = Vector<double>.One / (Vector<double>.One + (_chainOhms[step.Chain] * siemens));
                    _siemens[step.Into] += share * siemens;
                    _amps[step.Into] += share * step.Sign * amps;
                    break;
                case PortStepKind.Join:
                    var (second, secondAmps) = (_siemens[step.Second], step.SecondSign * _amps[step.Second]);
                    var both = Vector<double>.One / (siemens + second);
                    _siemens[step.Into] = siemens * second * both;
                    _amps[step.Into] = ((siemens * secondAmps) + (second * step.Sign * amps)) * both;
                    break;
                default:
                    break;
            }
        }
    }

    private void GoDown()
    {
        var steps = _plan.Steps;
        for (var i = steps.Length - 1; i >= 0; i--)
        {
            ref readonly var step = ref steps[i];
            var (siemens, amps) = (_siemens[step.Port], _amps[step.Port]);
            switch (step.Kind)
            {
                case PortStepKind.Link:
                    var ohms = _chainOhms[step.Chain];
                    _volts[step.Port] = ((step.Sign * _volts[step.Into]) - (ohms * amps)) / (Vector<double>.One + (ohms * siemens));
                    break;
                case PortStepKind.Join:
                    var (second, secondAmps, volts) = (_siemens[step.Second], step.SecondSign * _amps[step.Second], _volts[step.Into]);
                    var both = Vector<double>.One / (siemens + second);
                    _volts[step.Port] = step.Sign * ((second * volts) + secondAmps - (step.Sign * amps)) * both;
                    _volts[step.Second] = step.SecondSign * ((siemens * volts) + (step.Sign * amps) - secondAmps) * both;
                    break;
                default:
                    _volts[step.Port] = -amps / siemens;
                    break;
            }
        }
    }
}
