using System.Collections.Immutable;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>Solves networks of one structure; ordering and pattern are worked out once.</summary>
/// <remarks>
/// A ladder of attempts, each named in the solution: plain Newton; Newton with shortened steps; all sources raised from nothing;
/// a conductance beside every node that is taken away bit by bit. Not safe for two threads at once.
/// </remarks>
public sealed class NetworkSolver
{
    private const int SourceSteps = 20;

    // From that of a bright lamp down to that of a dark one, a tenth at a time.
    private const double MostShuntSiemens = 1e-2;
    private const double LeastShuntSiemens = 1e-12;

    private readonly ImmutableArray<(int A, int B)> _structure;
    private readonly string? _floating;
    private readonly Newton? _newton;
    private readonly double[] _volts;

    /// <summary>Works out the structure of a network.</summary>
    /// <param name="network">Any network of the structure: the same nodes and the same ends of elements in the same order.</param>
    public NetworkSolver(Network network)
    {
        _structure = [.. network.Elements.Select(e => (e.A, e.B))];
        _volts = new double[network.NodeCount];
        _floating = Connectivity.Floating(network);
        _newton = _floating is null && network.NodeCount > 1 ? new Newton(network) : null;
    }

    /// <summary>Finds the voltages of a network of this structure.</summary>
    /// <param name="network">The network.</param>
    /// <param name="start">Voltages to start from, one a node, as of a solve nearby; empty to start from nothing.</param>
    /// <returns>The solution; its status says whether to believe it.</returns>
    /// <exception cref="ArgumentException">The network is of another structure, or the start has another number of nodes.</exception>
    public Solution Solve(Network network, ReadOnlySpan<double> start = default)
    {
        CheckStructure(network);
        Array.Clear(_volts);
        if (!start.IsEmpty)
        {
            if (start.Length != _volts.Length)
            {
                throw new ArgumentException($"The start has {start.Length} voltages; {_volts.Length} are needed, one a node.", nameof(start));
            }

            start.CopyTo(_volts);
        }

        if (_newton is null)
        {
            return Ended(network, _floating is null ? SolveStatus.Solved : SolveStatus.Floating, "structure", _floating);
        }

        _newton.Steps = 0;
        var attempt = Plain(network, _newton) ?? Damped(network, _newton) ?? SourceStepping(network, _newton) ?? ConductanceStepping(network, _newton);
        if (attempt is not null)
        {
            return Ended(network, SolveStatus.Solved, attempt, null);
        }

        var worst = _newton.Worst(network, _volts).Node;
        return Ended(network, SolveStatus.NotConverged, "conductance stepping", network.Elements.First(e => e.A == worst || e.B == worst).Name);
    }

    private string? Plain(Network network, Newton newton) => newton.Run(network, _volts, damped: false) ? "plain" : null;

    private string? Damped(Network network, Newton newton)
    {
        Array.Clear(_volts);
        return newton.Run(network, _volts, damped: true) ? "damped" : null;
    }

    // With all sources at nothing the answer is known, and each small rise starts from the last.
    private string? SourceStepping(Network network, Newton newton)
    {
        Array.Clear(_volts);
        for (var step = 1; step <= SourceSteps; step++)
        {
            if (!newton.Run(network, _volts, damped: true, sourceShare: step / (double)SourceSteps))
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
            if (!newton.Run(network, _volts, damped: true, shuntSiemens: shunt))
            {
                return null;
            }
        }

        return newton.Run(network, _volts, damped: true) ? "conductance stepping" : null;
    }

    private void CheckStructure(Network network)
    {
        var elements = network.Elements;
        if (network.NodeCount != _volts.Length || elements.Length != _structure.Length)
        {
            throw new ArgumentException(
                $"The network has {network.NodeCount} nodes and {elements.Length} elements; this solver is for {_volts.Length} and {_structure.Length}.", nameof(network));
        }

        for (var i = 0; i < elements.Length; i++)
        {
            if ((elements[i].A, elements[i].B) != _structure[i])
            {
                throw new ArgumentException(
                    $"{elements[i].Name} joins nodes {elements[i].A} and {elements[i].B}; this solver is for {_structure[i].A} and {_structure[i].B} there.", nameof(network));
            }
        }
    }

    private Solution Ended(Network network, SolveStatus status, string attempt, string? failedAt)
    {
        var amps = ImmutableArray.CreateBuilder<double>(network.Elements.Length);
        foreach (var element in network.Elements)
        {
            amps.Add(status == SolveStatus.Floating ? double.NaN : ElementLaw.At(element, _volts[element.A] - _volts[element.B], 1).Amps);
        }

        var residual = _newton?.Worst(network, _volts).Amps ?? 0;
        return new Solution(status, attempt, _newton?.Steps ?? 0, residual, [.. _volts], amps.MoveToImmutable(), failedAt);
    }
}
