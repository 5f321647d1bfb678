using System.Collections.Immutable;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>Solves networks of one structure; how it comes apart, ordering and pattern are worked out once.</summary>
/// <remarks>
/// A ladder of attempts, each named in the solution: Newton on chains and ports; Newton on all nodes with shortened steps; all sources
/// raised from nothing; a conductance beside every node that is taken away bit by bit. Not safe for two threads at once.
/// </remarks>
public sealed class NetworkSolver
{
    private const int SourceSteps = 20;

    // From that of a bright lamp down to that of a dark one, a tenth at a time.
    private const double MostShuntSiemens = 1e-2;
    private const double LeastShuntSiemens = 1e-12;

    private readonly int[] _from;
    private readonly int[] _to;
    private readonly string? _floating;
    private readonly KirchhoffBalance _balance;
    private readonly double[] _volts;
    private PortNewton? _ports;
    private NetworkValues? _values;
    private PortPlan? _plan;
    private Newton? _newton;
    private Network? _loaded;

    /// <summary>Works out the structure of a network.</summary>
    /// <param name="network">Any network of the structure: the same nodes and the same ends of elements in the same order.</param>
    public NetworkSolver(Network network)
    {
        _from = new int[network.Elements.Length];
        _to = new int[network.Elements.Length];
        for (var i = 0; i < _from.Length; i++)
        {
            (_from[i], _to[i]) = (network.Elements[i].A, network.Elements[i].B);
        }

        _volts = new double[network.NodeCount];
        _balance = new KirchhoffBalance(network.NodeCount, _from, _to);
        _floating = Connectivity.Floating(network);
        if (_floating is null)
        {
            TakeApart(network);
        }
    }

    /// <summary>Finds the voltages of a network of this structure.</summary>
    /// <param name="network">The network.</param>
    /// <param name="start">Voltages to start from, one a node, as of a solve nearby; empty to start from nothing.</param>
    /// <returns>The solution; its status says whether to believe it.</returns>
    /// <exception cref="ArgumentException">The network is of another structure, or the start has another number of nodes.</exception>
    public Solution Solve(Network network, ReadOnlySpan<double> start = default)
    {
        if (!ReferenceEquals(network, _loaded))
        {
            CheckStructure(network);
        }

        if (!start.IsEmpty && start.Length != _volts.Length)
        {
            throw new ArgumentException($"The start has {start.Length} voltages; {_volts.Length} are needed, one a node.", nameof(start));
        }

        if (_floating is not null)
        {
            var none = Enumerable.Repeat(double.NaN, network.Elements.Length).ToImmutableArray();
            return new Solution(SolveStatus.Floating, "structure", 0, 0, [.. new double[_volts.Length]], none, _floating);
        }

        var ports = Loaded(network);
        return Plain(ports, start) ?? OnAllNodes(network, ports.Steps);
    }

    private Solution? Plain(PortNewton ports, ReadOnlySpan<double> start)
    {
        if (start.IsEmpty)
        {
            ports.Start();
        }
        else
        {
            ports.Start(start);
        }

        if (!ports.Run())
        {
            return null;
        }

        ports.Read();
        return _balance.Of(ports.ElementAmps) is { Holds: true } balance
            ? new Solution(SolveStatus.Solved, "plain", ports.Steps, balance.WorstAmps, [.. ports.NodeVolts], [.. ports.ElementAmps], null)
            : null;
    }

    private Solution OnAllNodes(Network network, int stepsBefore)
    {
        var newton = _newton ??= new Newton(network);
        newton.Steps = stepsBefore;
        var attempt = Damped(network, newton) ?? SourceStepping(network, newton) ?? ConductanceStepping(network, newton);
        var (worst, residual) = newton.Worst(network, _volts);
        return new Solution(
            attempt is null ? SolveStatus.NotConverged : SolveStatus.Solved,
            attempt ?? "conductance stepping",
            newton.Steps,
            residual,
            [.. _volts],
            [.. network.Elements.Select(e => ElementLaw.At(e, _volts[e.A] - _volts[e.B], 1).Amps)],
            attempt is null ? network.Elements.First(e => e.A == worst || e.B == worst).Name : null);
    }

    private string? Damped(Network network, Newton newton)
    {
        Array.Clear(_volts);
        return newton.Run(network, _volts) ? "damped" : null;
    }

    // With all sources at nothing the answer is known, and each small rise starts from the last.
    private string? SourceStepping(Network network, Newton newton)
    {
        Array.Clear(_volts);
        for (var step = 1; step <= SourceSteps; step++)
        {
            if (!newton.Run(network, _volts, sourceShare: step / (double)SourceSteps))
            {
                return null;
            }
        }

        return "source stepping";
    }

    // A large conductance at every node makes the network nearly straight; each smaller one starts from the last.
    private string? ConductanceStepping(Network network, Newton newton)
    {
        Array.Clear(_volts);
        for (var shunt = MostShuntSiemens; shunt >= LeastShuntSiemens; shunt /= 10)
        {
            if (!newton.Run(network, _volts, shuntSiemens: shunt))
            {
                return null;
            }
        }

        return newton.Run(network, _volts) ? "conductance stepping" : null;
    }

    private void TakeApart(Network network)
    {
        _plan = SeriesParallel.Of(network);
        _values = new NetworkValues(network);
        _ports = new PortNewton(_plan, _values);
        _ports.Load();
        _loaded = network;
    }

    /// <summary>The ports with the numbers of a network; taken apart anew where a part has become another kind of part.</summary>
    private PortNewton Loaded(Network network)
    {
        if (!ReferenceEquals(network, _loaded))
        {
            var elements = network.Elements;
            for (var i = 0; i < elements.Length; i++)
            {
                if (!PartKinds.MayStandAt(elements[i], _plan!.Kinds[i]))
                {
                    TakeApart(network);
                    return _ports!;
                }

                _values!.Put(i, elements[i]);
            }

            _ports!.Load();
            _loaded = network;
        }

        return _ports!;
    }

    private void CheckStructure(Network network)
    {
        var elements = network.Elements;
        if (network.NodeCount != _volts.Length || elements.Length != _from.Length)
        {
            throw new ArgumentException(
                $"The network has {network.NodeCount} nodes and {elements.Length} elements; this solver is for {_volts.Length} and {_from.Length}.", nameof(network));
        }

        for (var i = 0; i < elements.Length; i++)
        {
            if (elements[i].A != _from[i] || elements[i].B != _to[i])
            {
                throw new ArgumentException(
                    $"{elements[i].Name} joins nodes {elements[i].A} and {elements[i].B}; this solver is for {_from[i]} and {_to[i]} there.", nameof(network));
            }
        }
    }
}
