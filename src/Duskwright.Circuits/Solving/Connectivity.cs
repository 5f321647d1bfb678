using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>Finds what hangs on nothing.</summary>
internal static class Connectivity
{
    /// <summary>The name of an element that no path joins to the reference, or of the node where no element is at all; none when all hangs together.</summary>
    internal static string? Floating(Network network)
    {
        var group = Enumerable.Range(0, network.NodeCount).ToArray();
        int Root(int node)
        {
            while (group[node] != node)
            {
                group[node] = group[group[node]];
                node = group[node];
            }

            return node;
        }

        foreach (var element in network.Elements)
        {
            group[Root(element.A)] = Root(element.B);
        }

        for (var node = 1; node < network.NodeCount; node++)
        {
            if (Root(node) != Root(0))
            {
                return network.Elements.FirstOrDefault(e => Root(e.A) == Root(node))?.Name ?? $"node {node}";
            }
        }

        return null;
    }
}
