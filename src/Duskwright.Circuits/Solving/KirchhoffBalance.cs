namespace Duskwright.Circuits.Solving;

/// <summary>Whether what flows into every node flows out of it.</summary>
/// <param name="nodeCount">Number of nodes.</param>
/// <param name="from">The first node of each element.</param>
/// <param name="to">The second.</param>
internal sealed class KirchhoffBalance(int nodeCount, int[] from, int[] to)
{
    // A part in a thousand million of the current through the node, and a third of a nanoampere.
    internal const double RelativeResidual = 1e-9;
    internal const double LeastResidualAmps = 3e-10;

    private readonly double[] _sum = new double[nodeCount];
    private readonly double[] _through = new double[nodeCount];

    /// <summary>Checks the currents of all elements.</summary>
    /// <returns>Whether every node balances, and the worst error at any node but the reference, A.</returns>
    internal (bool Holds, double WorstAmps) Of(double[] elementAmps)
    {
        Array.Clear(_sum);
        Array.Clear(_through);
        for (var i = 0; i < elementAmps.Length; i++)
        {
            var (amps, size) = (elementAmps[i], Math.Abs(elementAmps[i]));
            _sum[from[i]] -= amps;
            _sum[to[i]] += amps;
            _through[from[i]] += size;
            _through[to[i]] += size;
        }

        var (holds, worst) = (true, 0.0);
        for (var node = 1; node < _sum.Length; node++)
        {
            var off = Math.Abs(_sum[node]);
            holds &= off <= LeastResidualAmps + (RelativeResidual * _through[node]);
            worst = Math.Max(worst, off);
        }

        return (holds, worst);
    }
}
