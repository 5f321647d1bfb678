using System.Collections.Immutable;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>Newton's method on node voltages for networks of one structure; ordering and pattern are worked out once.</summary>
/// <remarks>
/// Nodal analysis: Kirchhoff's current law at every node but the reference (Vlach and Singhal, Computer Methods for Circuit Analysis
/// and Design, chapters 4 and 10). All laws are monotone, so the Jacobian is symmetric positive definite. Not safe for two threads at once.
/// </remarks>
public sealed class NetworkSolver
{
    private const int MostSteps = 80;

    // One part in ten thousand million of the current through the node, and a picoampere: far below any meter.
    private const double RelativeResidual = 1e-10;
    private const double LeastResidualAmps = 1e-13;

    private readonly int _nodes;
    private readonly SparseLdl? _matrix;
    private readonly int[] _below;
    private readonly string? _floating;
    private readonly double[] _volts;
    private readonly double[] _imbalance;
    private readonly double[] _through;
    private readonly double[] _trial;
    private readonly double[] _step;

    /// <summary>Works out the structure of a network.</summary>
    /// <param name="network">Any network of the structure: the same nodes and the same ends of elements in the same order.</param>
    public NetworkSolver(Network network)
    {
        _nodes = network.NodeCount;
        _volts = new double[_nodes];
        _imbalance = new double[_nodes];
        _through = new double[_nodes];
        _trial = new double[_nodes];
        _step = new double[_nodes - 1];
        _below = new int[network.Elements.Length];
        _floating = Connectivity.Floating(network);
        if (_floating is not null || _nodes == 1)
        {
            return;
        }

        // Node 0 is the reference and leaves the matrix; node n is row n − 1.
        _matrix = new SparseLdl(
            _nodes - 1,
            [.. network.Elements.Where(e => e.A > 0 && e.B > 0).Select(e => (e.A - 1, e.B - 1))]);
        for (var i = 0; i < _below.Length; i++)
        {
            var element = network.Elements[i];
            _below[i] = element.A > 0 && element.B > 0 ? _matrix.IndexOf(element.A - 1, element.B - 1) : -1;
        }
    }

    /// <summary>Finds the voltages of a network of this structure.</summary>
    /// <param name="network">The network.</param>
    /// <param name="start">Voltages to start from, one a node, as of a solve nearby; empty to start from nothing.</param>
    /// <returns>The solution; its status says whether to believe it.</returns>
    public Solution Solve(Network network, ReadOnlySpan<double> start = default)
    {
        if (_floating is not null)
        {
            return Ended(network, SolveStatus.Floating, "structure", 0, 0, _floating);
        }

        Array.Clear(_volts);
        if (!start.IsEmpty)
        {
            start.CopyTo(_volts);
        }

        var steps = 0;
        if (Newton(network, damped: false, sourceShare: 1, ref steps))
        {
            return Ended(network, SolveStatus.Solved, "plain", steps, Residual(network, 1), null);
        }

        Array.Clear(_volts);
        if (Newton(network, damped: true, sourceShare: 1, ref steps))
        {
            return Ended(network, SolveStatus.Solved, "damped", steps, Residual(network, 1), null);
        }

        // Source stepping: with all sources at nothing the answer is known, and each small rise starts from the last.
        Array.Clear(_volts);
        var climbed = true;
        for (var share = 1; share <= 20 && climbed; share++)
        {
            climbed = Newton(network, damped: true, sourceShare: share / 20.0, ref steps);
        }

        var residual = Residual(network, 1);
        return climbed
            ? Ended(network, SolveStatus.Solved, "source stepping", steps, residual, null)
            : Ended(network, SolveStatus.NotConverged, "source stepping", steps, residual, WorstElement(network));
    }

    private bool Newton(Network network, bool damped, double sourceShare, ref int steps)
    {
        for (var turn = 0; turn < MostSteps; turn++)
        {
            _matrix!.Clear();
            var worst = Stamp(network, _volts, sourceShare, fill: true);
            if (Balanced())
            {
                return true;
            }

            if (!_matrix.Factorise())
            {
                return false;
            }

            for (var i = 0; i < _step.Length; i++)
            {
                _step[i] = -_imbalance[i + 1];
            }

            _matrix.Solve(_step);
            steps++;
            var share = 1.0;
            do
            {
                for (var i = 0; i < _step.Length; i++)
                {
                    _trial[i + 1] = _volts[i + 1] + (share * _step[i]);
                }

                share *= 0.5;
            }
            while (damped && share > 1e-6 && Stamp(network, _trial, sourceShare, fill: false) > worst);

            Array.Copy(_trial, _volts, _nodes);
        }

        return false;
    }

    private double Stamp(Network network, double[] volts, double sourceShare, bool fill)
    {
        Array.Clear(_imbalance);
        Array.Clear(_through);
        var elements = network.Elements;
        for (var i = 0; i < elements.Length; i++)
        {
            var element = elements[i];
            var across = volts[element.A] - volts[element.B];
            var (amps, siemens) = ElementLaw.At(element, across, sourceShare);
            _imbalance[element.A] += amps;
            _imbalance[element.B] -= amps;
            _through[element.A] += Math.Abs(amps);
            _through[element.B] += Math.Abs(amps);
            if (!fill)
            {
                continue;
            }

            if (element.A > 0)
            {
                _matrix!.AddDiagonal(element.A - 1, siemens);
            }

            if (element.B > 0)
            {
                _matrix!.AddDiagonal(element.B - 1, siemens);
            }

            if (_below[i] >= 0)
            {
                _matrix!.AddBelow(_below[i], -siemens);
            }
        }

        var worst = 0.0;
        for (var node = 1; node < _nodes; node++)
        {
            worst = Math.Max(worst, Math.Abs(_imbalance[node]));
        }

        return worst;
    }

    private bool Balanced()
    {
        for (var node = 1; node < _nodes; node++)
        {
            if (!(Math.Abs(_imbalance[node]) <= LeastResidualAmps + (RelativeResidual * _through[node])))
            {
                return false;
            }
        }

        return true;
    }

    private double Residual(Network network, double sourceShare) => Stamp(network, _volts, sourceShare, fill: false);

    private string WorstElement(Network network)
    {
        var worst = 1;
        for (var node = 2; node < _nodes; node++)
        {
            worst = Math.Abs(_imbalance[node]) > Math.Abs(_imbalance[worst]) ? node : worst;
        }

        return network.Elements.First(e => e.A == worst || e.B == worst).Name;
    }

    private Solution Ended(Network network, SolveStatus status, string attempt, int steps, double residual, string? failedAt)
    {
        var amps = ImmutableArray.CreateBuilder<double>(network.Elements.Length);
        foreach (var element in network.Elements)
        {
            amps.Add(status == SolveStatus.Floating ? double.NaN : ElementLaw.At(element, _volts[element.A] - _volts[element.B], 1).Amps);
        }

        return new Solution(status, attempt, steps, residual, [.. _volts], amps.MoveToImmutable(), failedAt);
    }
}
