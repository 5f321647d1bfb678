using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>Newton's method on all node voltages, its steps shortened until the co-content falls: Kirchhoff's current law at every node but the reference.</summary>
/// <remarks>
/// Nodal analysis (Vlach and Singhal, Computer Methods for Circuit Analysis and Design, chapters 4 and 10). Every element's current
/// rises with its voltage, so the imbalance is the gradient of a convex function, Millar's co-content (Philosophical Magazine 42
/// (1951) 1150), and the Jacobian is symmetric positive definite. Arrays are by node; row n − 1 of the matrix is node n.
/// </remarks>
internal sealed class Newton
{
    private const int MostSteps = 80;

    // One part in ten thousand million of the current through the node, and a third of a nanoampere, which is above the leak of some
    // dark lamps: a part of the network that only they hold is lost in the rounding of stout wires, and nothing in it is lit.
    private const double RelativeResidual = 1e-10;
    private const double LeastResidualAmps = 3e-10;

    // What a voltage rounded to its last digits makes in the current of a stout wire.
    private const double Rounding = 4 * 2.2e-16;

    // A shortened step may overshoot the lowest point of the co-content along it by a tenth of the first slope.
    private const double Overshoot = 0.1;
    private const double LeastStepShare = 1e-9;

    private readonly SparseLdl _matrix;
    private readonly int[] _below;
    private readonly double[] _imbalance;
    private readonly double[] _allowed;
    private readonly double[] _trial;
    private readonly double[] _step;

    /// <summary>Works out ordering and pattern of a connected network of at least two nodes.</summary>
    internal Newton(Network network)
    {
        _imbalance = new double[network.NodeCount];
        _allowed = new double[network.NodeCount];
        _trial = new double[network.NodeCount];
        _step = new double[network.NodeCount - 1];
        _matrix = new SparseLdl(
            network.NodeCount - 1,
            [.. network.Elements.Where(e => e.A > 0 && e.B > 0).Select(e => (e.A - 1, e.B - 1))]);
        _below = [.. network.Elements.Select(e => e.A > 0 && e.B > 0 ? _matrix.IndexOf(e.A - 1, e.B - 1) : -1)];
    }

    /// <summary>Steps taken over all runs since it was last set to nothing.</summary>
    internal int Steps { get; set; }

    /// <summary>Runs from the voltages given and leaves the last ones in their place.</summary>
    /// <param name="network">The network.</param>
    /// <param name="volts">On entry the start, on return the end.</param>
    /// <param name="sourceShare">Share of every source's voltage, 0 to 1.</param>
    /// <param name="shuntSiemens">A conductance from every node to the reference.</param>
    /// <returns>Whether every node balances.</returns>
    internal bool Run(Network network, double[] volts, double sourceShare = 1, double shuntSiemens = 0)
    {
        for (var turn = 0; turn < MostSteps; turn++)
        {
            Stamp(network, volts, sourceShare, shuntSiemens, fill: true);
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
            Steps++;
            var slope = Slope();
            var share = 1.0;
            GoAlong(volts, share);
            while (share > LeastStepShare)
            {
                Stamp(network, _trial, sourceShare, shuntSiemens, fill: false);
                if (Slope() <= -Overshoot * slope)
                {
                    break;
                }

                share /= 2;
                GoAlong(volts, share);
            }

            Array.Copy(_trial, volts, volts.Length);
        }

        return false;
    }

    /// <summary>The node that balances worst at some voltages, and by how much.</summary>
    internal (int Node, double Amps) Worst(Network network, double[] volts)
    {
        Stamp(network, volts, sourceShare: 1, shuntSiemens: 0, fill: false);
        var worst = 1;
        for (var node = 2; node < _imbalance.Length; node++)
        {
            worst = Math.Abs(_imbalance[node]) > Math.Abs(_imbalance[worst]) ? node : worst;
        }

        return (worst, Math.Abs(_imbalance[worst]));
    }

    private void GoAlong(double[] volts, double share)
    {
        for (var i = 0; i < _step.Length; i++)
        {
            _trial[i + 1] = volts[i + 1] + (share * _step[i]);
        }
    }

    /// <summary>How steeply the co-content changes along the step, W.</summary>
    private double Slope()
    {
        var slope = 0.0;
        for (var i = 0; i < _step.Length; i++)
        {
            slope += _imbalance[i + 1] * _step[i];
        }

        return slope;
    }

    private void Stamp(Network network, double[] volts, double sourceShare, double shuntSiemens, bool fill)
    {
        Array.Clear(_imbalance);
        Array.Clear(_allowed);
        if (fill)
        {
            _matrix.Clear();
        }

        var elements = network.Elements;
        for (var i = 0; i < elements.Length; i++)
        {
            var element = elements[i];
            var (voltsA, voltsB) = (volts[element.A], volts[element.B]);
            var (amps, siemens) = ElementLaw.At(element, voltsA - voltsB, sourceShare);
            _imbalance[element.A] += amps;
            _imbalance[element.B] -= amps;
            var allowed = (RelativeResidual * Math.Abs(amps)) + (Rounding * siemens * (Math.Abs(voltsA) + Math.Abs(voltsB)));
            _allowed[element.A] += allowed;
            _allowed[element.B] += allowed;
            if (fill)
            {
                Fill(element, _below[i], siemens);
            }
        }

        for (var node = 1; shuntSiemens > 0 && node < volts.Length; node++)
        {
            _imbalance[node] += shuntSiemens * volts[node];
            if (fill)
            {
                _matrix.AddDiagonal(node - 1, shuntSiemens);
            }
        }
    }

    private void Fill(Element element, int below, double siemens)
    {
        if (element.A > 0)
        {
            _matrix.AddDiagonal(element.A - 1, siemens);
        }

        if (element.B > 0)
        {
            _matrix.AddDiagonal(element.B - 1, siemens);
        }

        if (below >= 0)
        {
            _matrix.AddBelow(below, -siemens);
        }
    }

    private bool Balanced()
    {
        for (var node = 1; node < _imbalance.Length; node++)
        {
            if (!(Math.Abs(_imbalance[node]) <= LeastResidualAmps + _allowed[node]))
            {
                return false;
            }
        }

        return true;
    }
}
