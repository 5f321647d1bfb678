using System.Numerics;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>Whether what flows into every node flows out of it, in several networks of one structure.</summary>
/// <param name="network">One of them.</param>
internal sealed class LaneBalance(Network network)
{
    private readonly Vector<double>[] _sum = new Vector<double>[network.NodeCount];
    private readonly Vector<double>[] _through = new Vector<double>[network.NodeCount];
    private readonly (int From, int To)[] _ends = [.. network.Elements.Select(e => (e.A, e.B))];

    /// <summary>Checks the currents of all elements, as <see cref="KirchhoffBalance"/> does.</summary>
    internal bool Holds(Vector<double>[] elementAmps)
    {
        Array.Clear(_sum);
        Array.Clear(_through);
        for (var i = 0; i < _ends.Length; i++)
        {
            var (amps, size) = (elementAmps[i], Vector.Abs(elementAmps[i]));
            var (from, to) = _ends[i];
            _sum[from] -= amps;
            _sum[to] += amps;
            _through[from] += size;
            _through[to] += size;
        }

        var least = new Vector<double>(KirchhoffBalance.LeastResidualAmps);
        for (var node = 1; node < _sum.Length; node++)
        {
            if (!Vector.LessThanOrEqualAll(Vector.Abs(_sum[node]), least + (KirchhoffBalance.RelativeResidual * _through[node])))
            {
                return false;
            }
        }

        return true;
    }
}
