using System.Collections.Immutable;

namespace Duskwright.Harness.Routes;

/// <summary>Shortest ways from one node to all others.</summary>
internal sealed class ShortestTree(IReadOnlyList<PlanePoint> nodes, int root, double[] metres, (int Node, string Way)[] towards)
{
    /// <summary>How far a node is from the root, m; infinite where no way leads there.</summary>
    internal double MetresTo(int node) => metres[node];

    /// <summary>The next node on the way from a node to the root; none at the root.</summary>
    internal int? NextFrom(int node) => node == root ? null : towards[node].Node;

    /// <summary>The way from a node to the root: its points, the wireways in order, and its length, infinite where there is none.</summary>
    internal (ImmutableArray<PlanePoint> Points, ImmutableArray<string> Ways, double Metres) PathTo(int node)
    {
        if (double.IsInfinity(metres[node]))
        {
            return ([], [], double.PositiveInfinity);
        }

        var points = ImmutableArray.CreateBuilder<PlanePoint>();
        var ways = new List<string>();
        var length = metres[node];
        for (; node != root; node = towards[node].Node)
        {
            points.Add(nodes[node]);
            if (towards[node].Way.Length > 0 && (ways.Count == 0 || ways[^1] != towards[node].Way))
            {
                ways.Add(towards[node].Way);
            }
        }

        points.Add(nodes[root]);
        return (points.ToImmutable(), [.. ways], length);
    }
}
