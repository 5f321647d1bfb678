namespace Duskwright.Circuits.Solving;

/// <summary>The order in which nodes are eliminated: always one with the fewest neighbours left, so that a tree makes no fill-in at all.</summary>
/// <remarks>Minimum degree; George and Liu, Computer Solution of Large Sparse Positive Definite Systems (1981), chapter 5.</remarks>
internal sealed class EliminationOrder
{
    private EliminationOrder(int[] order, int[][] later)
    {
        Order = order;
        Later = later;
    }

    /// <summary>Nodes in the order of elimination.</summary>
    internal int[] Order { get; }

    /// <summary>For each place in the order, the places later on that the node is joined to, fill-in included, rising.</summary>
    internal int[][] Later { get; }

    internal static EliminationOrder Of(int count, IEnumerable<(int A, int B)> edges)
    {
        var neighbours = new SortedSet<int>[count];
        for (var i = 0; i < count; i++)
        {
            neighbours[i] = [];
        }

        foreach (var (a, b) in edges)
        {
            neighbours[a].Add(b);
            neighbours[b].Add(a);
        }

        var byDegree = new SortedSet<(int Degree, int Node)>(Enumerable.Range(0, count).Select(n => (neighbours[n].Count, n)));
        var order = new int[count];
        var place = new int[count];
        var later = new int[count][];
        for (var k = 0; k < count; k++)
        {
            var (degree, node) = byDegree.Min;
            byDegree.Remove((degree, node));
            order[k] = node;
            place[node] = k;
            var around = neighbours[node].ToArray();
            later[k] = around;
            foreach (var one in around)
            {
                byDegree.Remove((neighbours[one].Count, one));
                neighbours[one].Remove(node);
            }

            foreach (var one in around)
            {
                foreach (var other in around)
                {
                    if (one != other)
                    {
                        neighbours[one].Add(other);
                    }
                }

                byDegree.Add((neighbours[one].Count, one));
            }
        }

        foreach (var list in later)
        {
            for (var i = 0; i < list.Length; i++)
            {
                list[i] = place[list[i]];
            }

            Array.Sort(list);
        }

        return new EliminationOrder(order, later);
    }
}
