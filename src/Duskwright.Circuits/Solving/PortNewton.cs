using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>Newton's method on the ports of a network: up the tree gathering conductances, down it spreading voltages.</summary>
/// <remarks>
/// Every port is a conductance G beside a current J at each step (Norton). A link through r ohms makes G/(1 + r·G) and J/(1 + r·G) of them;
/// two ports one after the other make G₁G₂/(G₁ + G₂) and (G₁J₂ + G₂J₁)/(G₁ + G₂). That is elimination of the nodal equations, node by node, in
/// time linear in the parts; the core that is left is factorised sparsely. Nothing is allocated in a run.
/// </remarks>
internal sealed class PortNewton
{
    private const int MostTurns = 40;

    private readonly PortPlan _plan;
    private readonly LedBank _leds;
    private readonly OtherParts _others;
    private readonly CoreNodes? _core;
    private readonly NetworkValues _values;
    private readonly double[] _chainOhms;
    private readonly double[] _wireSiemens;
    private readonly double[] _siemens;
    private readonly double[] _amps;
    private readonly double[] _volts;
    private readonly double[] _chainAmps;
    private bool _started;

    internal PortNewton(PortPlan plan, NetworkValues values)
    {
        _plan = plan;
        _values = values;
        _leds = new LedBank(plan);
        _others = new OtherParts(plan);
        _core = plan.CoreNodes.Length > 0 ? new CoreNodes(plan) : null;
        _chainOhms = new double[plan.ChainPort.Length];
        _chainAmps = new double[plan.ChainPort.Length];
        _wireSiemens = new double[plan.Ports.Length];
        _siemens = new double[plan.Ports.Length];
        _amps = new double[plan.Ports.Length];
        _volts = new double[plan.Ports.Length];
        NodeVolts = new double[plan.NodeCount];
        ElementAmps = new double[plan.Kinds.Length];
    }

    /// <summary>Steps of the last run.</summary>
    internal int Steps { get; private set; }

    /// <summary>Voltage of each node after <see cref="Read"/>, V.</summary>
    internal double[] NodeVolts { get; }

    /// <summary>Current of each element from its first end of the plan to its second after <see cref="Read"/>, A.</summary>
    internal double[] ElementAmps { get; }

    /// <summary>Takes all numbers.</summary>
    internal void Load()
    {
        Array.Clear(_wireSiemens);
        for (var chain = 0; chain < _chainOhms.Length; chain++)
        {
            var ohms = WireOhms(chain);
            _chainOhms[chain] = ohms;
            if (chain < _plan.LedChains)
            {
                _leds.Load(chain, _values, ohms);
            }
            else if (chain < _plan.WireChainsEnd)
            {
                _wireSiemens[_plan.ChainPort[chain]] += 1 / ohms;
            }
        }
    }

    /// <summary>Starts from nothing.</summary>
    internal void Start()
    {
        _started = false;
        _core?.Start([]);
        Array.Clear(_volts);
        _leds.Dark();
    }

    /// <summary>Starts from the voltages of a solve nearby.</summary>
    internal void Start(ReadOnlySpan<double> nodeVolts)
    {
        Start();
        _started = true;
        _core?.Start(nodeVolts);
        for (var port = 0; port < _volts.Length; port++)
        {
            var (from, to) = _plan.Ports[port];
            _volts[port] = from >= 0 ? nodeVolts[from] - nodeVolts[to] : 0;
        }
    }

    /// <summary>Runs from the start. False where it does not settle.</summary>
    internal bool Run()
    {
        for (Steps = 0; Steps < MostTurns; Steps++)
        {
            if (_started)
            {
                _leds.Straighten(_volts);
            }

            _started = true;
            _others.Straighten(_volts, _values);
            Array.Copy(_wireSiemens, _siemens, _siemens.Length);
            Array.Clear(_amps);
            _leds.AddTo(_siemens, _amps);
            _others.AddTo(_siemens, _amps);
            GoUp();
            if (_core?.Solve(_siemens, _amps, _volts) == false)
            {
                return false;
            }

            GoDown();
            if (_leds.StraightAt(_volts) && _others.StraightAt(_volts, _values))
            {
                Steps++;
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

        foreach (var step in _plan.Steps)
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
        foreach (var step in _plan.NodeSteps)
        {
            var drop = step.Wire >= 0 ? _chainAmps[step.Through] * _values.Ohms[step.Wire] : _volts[step.Through];
            NodeVolts[step.Node] = NodeVolts[step.From] - (step.Sign * drop);
        }
    }

    private double WireOhms(int chain)
    {
        var ohms = 0.0;
        for (var i = _plan.ChainWireStart[chain]; i < _plan.ChainWireStart[chain + 1]; i++)
        {
            ohms += _values.Ohms[_plan.ChainWires[i]];
        }

        return ohms;
    }

    private void GoUp()
    {
        foreach (ref readonly var step in _plan.Steps.AsSpan())
        {
            var (siemens, amps) = (_siemens[step.Port], _amps[step.Port]);
            switch (step.Kind)
            {
                case PortStepKind.Link:
                    var share = 1 / (1 + (_chainOhms[step.Chain] * siemens));
                    _siemens[step.Into] += share * siemens;
                    _amps[step.Into] += share * step.Sign * amps;
                    break;
                case PortStepKind.Join:
                    var (second, secondAmps) = (_siemens[step.Second], step.SecondSign * _amps[step.Second]);
                    var both = 1 / (siemens + second);
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
                    _volts[step.Port] = ((step.Sign * _volts[step.Into]) - (ohms * amps)) / (1 + (ohms * siemens));
                    break;
                case PortStepKind.Join:
                    var (second, secondAmps, volts) = (_siemens[step.Second], step.SecondSign * _amps[step.Second], _volts[step.Into]);
                    var both = 1 / (siemens + second);
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
