using System.Collections.Immutable;
using System.Numerics;

namespace Duskwright.Harness.Feeds;

/// <summary>The shortest order in which one pair from the bank can call at every building; it may end anywhere.</summary>
/// <remarks>
/// Up to twelve buildings exactly, by M. Held and R. M. Karp, A dynamic programming approach to sequencing problems, J. SIAM 10 (1962) 196-210;
/// beyond, the nearest building next, then stretches turned round and buildings moved as long as that shortens it, with the shortest spanning tree as the bound.
/// </remarks>
public static class ChainOrder
{
    private const int MostExact = 12;

    /// <summary>Orders the buildings.</summary>
    /// <param name="metres">Length between any two places, symmetrical; place 0 is the bank.</param>
    /// <returns>The places in order, the bank left out; the length; and what no order is shorter than.</returns>
    public static (ImmutableArray<int> Order, double Metres, double AtLeastMetres) Shortest(IReadOnlyList<IReadOnlyList<double>> metres)
    {
        if (metres.Count < 2)
        {
            return ([], 0, 0);
        }

        if (metres.Count - 1 <= MostExact)
        {
            var exact = Exact(metres);
            return ([.. exact], Length(metres, exact), Length(metres, exact));
        }

        var order = Improved(metres, NearestNext(metres));
        var length = Length(metres, order);
        return ([.. order], length, Math.Min(length, SpanningMetres(metres)));
    }

    private static double Length(IReadOnlyList<IReadOnlyList<double>> metres, List<int> order) =>
        order.Select((place, i) => metres[i == 0 ? 0 : order[i - 1]][place]).Sum();

    // best[set, last]: the shortest chain from the bank over a set of buildings that ends at the last.
    private static List<int> Exact(IReadOnlyList<IReadOnlyList<double>> metres)
    {
        var n = metres.Count - 1;
        var best = new double[1 << n, n];
        var before = new int[1 << n, n];
        for (var set = 1; set < 1 << n; set++)
        {
            for (var last = 0; last < n; last++)
            {
                best[set, last] = double.PositiveInfinity;
                if ((set & (1 << last)) == 0)
                {
                    continue;
                }

                var rest = set ^ (1 << last);
                if (rest == 0)
                {
                    best[set, last] = metres[0][last + 1];
                }

                for (var previous = 0; previous < n; previous++)
                {
                    if ((rest & (1 << previous)) != 0 && best[rest, previous] + metres[previous + 1][last + 1] is var length && length < best[set, last])
                    {
                        (best[set, last], before[set, last]) = (length, previous);
                    }
                }
            }
        }

        var all = (1 << n) - 1;
        var at = Enumerable.Range(0, n).MinBy(last => best[all, last]);
        var order = new List<int>();
        for (var set = all; set != 0;)
        {
            order.Add(at + 1);
            var previous = BitOperations.PopCount((uint)set) > 1 ? before[set, at] : 0;
            set ^= 1 << at;
            at = previous;
        }

        order.Reverse();
        return order;
    }

    private static List<int> NearestNext(IReadOnlyList<IReadOnlyList<double>> metres)
    {
        var left = Enumerable.Range(1, metres.Count - 1).ToList();
        var (order, at) = (new List<int>(), 0);
        while (left.Count > 0)
        {
            at = left.MinBy(p => metres[at][p]);
            order.Add(at);
            left.Remove(at);
        }

        return order;
    }

    private static List<int> Improved(IReadOnlyList<IReadOnlyList<double>> metres, List<int> order)
    {
        var length = Length(metres, order);
        for (var better = true; better;)
        {
            better = false;
            for (var i = 0; i < order.Count && !better; i++)
            {
                for (var j = 0; j < order.Count && !better; j++)
                {
                    foreach (var other in i < j ? new[] { Turned(order, i, j), Moved(order, i, j) } : [Moved(order, i, j)])
                    {
                        if (Length(metres, other) is var shorter && shorter < length - 1e-9)
                        {
                            (order, length, better) = (other, shorter, true);
                            break;
                        }
                    }
                }
            }
        }

        return order;
    }

    private static List<int> Turned(List<int> order, int from, int to)
    {
        var other = order.ToList();
        other.Reverse(from, to - from + 1);
        return other;
    }

    private static List<int> Moved(List<int> order, int from, int to)
    {
        var other = order.ToList();
        other.RemoveAt(from);
        other.Insert(to, order[from]);
        return other;
    }

    private static double SpanningMetres(IReadOnlyList<IReadOnlyList<double>> metres)
    {
        var nearest = metres[0].ToArray();
        var left = Enumerable.Range(1, metres.Count - 1).ToHashSet();
        var sum = 0.0;
        while (left.Count > 0)
        {
            var next = left.MinBy(p => nearest[p]);
            sum += nearest[next];
            left.Remove(next);
            foreach (var p in left)
            {
                nearest[p] = Math.Min(nearest[p], metres[next][p]);
            }
        }

        return sum;
    }
}
