using System.Collections.Immutable;

namespace Duskwright.Harness.Trunks;

/// <summary>Grows a short trunk: the nearest terminal is joined each time, then junctions are taken in and out as long as that shortens it.</summary>
/// <remarks>
/// H. Takahashi and A. Matsuyama, An approximate solution for the Steiner problem in graphs, Math. Japonica 24 (1980) 573-577;
/// the improvement is the exchange of Steiner junctions, each tree being the shortest spanning tree of its junctions with bare ends cut off.
/// </remarks>
internal static class TrunkGrowth
{
    /// <summary>Grows from several terminals, over other lengths where a guide gives them, and keeps the shortest.</summary>
    internal static ImmutableArray<int> Best(WireNet net, IReadOnlyList<int> terminals, int starts, WireNet? guide = null)
    {
        var over = guide ?? net;
        var best = Improved(net, terminals, Grown(over, terminals, terminals[0]));
        var metres = Metres(net, best);
        var step = Math.Max(1, terminals.Count / Math.Max(1, starts));
        for (var i = step; i < terminals.Count; i += step)
        {
            var other = Improved(net, terminals, Grown(over, terminals, terminals[i]));
            if (Metres(net, other) is var length && length < metres - 1e-12)
            {
                (best, metres) = (other, length);
            }
        }

        return best;
    }

    internal static double Metres(WireNet net, IEnumerable<int> pieces) => pieces.Sum(p => net.Pieces[p].Metres);

    /// <summary>Terminals that no piece joins to the first one.</summary>
    internal static ImmutableArray<int> Unreached(WireNet net, IReadOnlyList<int> terminals)
    {
        var reached = new bool[net.Junctions];
        var stack = new Stack<int>([terminals[0]]);
        reached[terminals[0]] = true;
        while (stack.TryPop(out var at))
        {
            foreach (var (to, _) in net.Around[at])
            {
                if (!reached[to])
                {
                    reached[to] = true;
                    stack.Push(to);
                }
            }
        }

        return [.. terminals.Where(t => !reached[t])];
    }

    private static bool[] Grown(WireNet net, IReadOnlyList<int> terminals, int start)
    {
        var inTree = new bool[net.Junctions];
        inTree[start] = true;
        var waiting = terminals.Where(t => t != start).ToHashSet();
        while (waiting.Count > 0)
        {
            var metres = new double[net.Junctions];
            var before = new int[net.Junctions];
            var queue = new PriorityQueue<int, (double, int)>();
            for (var j = 0; j < net.Junctions; j++)
            {
                metres[j] = inTree[j] ? 0 : double.PositiveInfinity;
                if (inTree[j])
                {
                    queue.Enqueue(j, (0, j));
                }
            }

            while (queue.TryDequeue(out var at, out var reached))
            {
                if (reached.Item1 > metres[at])
                {
                    continue;
                }

                if (waiting.Remove(at))
                {
                    for (var j = at; !inTree[j]; j = before[j])
                    {
                        inTree[j] = true;
                    }

                    break;
                }

                foreach (var (to, piece) in net.Around[at])
                {
                    if (metres[at] + net.Pieces[piece].Metres < metres[to])
                    {
                        (metres[to], before[to]) = (metres[at] + net.Pieces[piece].Metres, at);
                        queue.Enqueue(to, (metres[to], to));
                    }
                }
            }
        }

        return inTree;
    }

    private static ImmutableArray<int> Improved(WireNet net, IReadOnlyList<int> terminals, bool[] chosen)
    {
        var isTerminal = new bool[net.Junctions];
        foreach (var terminal in terminals)
        {
            isTerminal[terminal] = true;
        }

        var tree = Spanned(net, isTerminal, chosen)!.Value;
        var metres = Metres(net, tree);
        for (var better = true; better;)
        {
            better = false;
            for (var j = 0; j < net.Junctions; j++)
            {
                // A junction far from the tree cannot help by itself: it needs two pieces that reach the tree, or it is in and may go.
                if (isTerminal[j] || (!chosen[j] && net.Around[j].Count(n => chosen[n.To]) < 2))
                {
                    continue;
                }

                chosen[j] = !chosen[j];
                if (Spanned(net, isTerminal, chosen) is { } other && Metres(net, other) is var length && length < metres - 1e-12)
                {
                    (tree, metres, better) = (other, length, true);
                    Array.Clear(chosen);
                    foreach (var piece in tree)
                    {
                        chosen[net.Pieces[piece].From] = chosen[net.Pieces[piece].To] = true;
                    }
                }
                else
                {
                    chosen[j] = !chosen[j];
                }
            }
        }

        return tree;
    }

    // Prim's shortest spanning tree of the chosen junctions, bare ends cut off; none where they do not hang together.
    private static ImmutableArray<int>? Spanned(WireNet net, bool[] isTerminal, bool[] chosen)
    {
        var start = Array.IndexOf(isTerminal, true);
        var by = Enumerable.Repeat(-1, net.Junctions).ToArray();
        var done = new bool[net.Junctions];
        var nearest = Enumerable.Repeat(double.PositiveInfinity, net.Junctions).ToArray();
        var degree = new int[net.Junctions];
        var order = new List<int>();
        var queue = new PriorityQueue<int, (double, int)>();
        nearest[start] = 0;
        queue.Enqueue(start, (0, start));
        while (queue.TryDequeue(out var at, out _))
        {
            if (done[at])
            {
                continue;
            }

            done[at] = true;
            order.Add(at);
            if (by[at] >= 0)
            {
                degree[net.Pieces[by[at]].From]++;
                degree[net.Pieces[by[at]].To]++;
            }

            foreach (var (to, piece) in net.Around[at])
            {
                if (chosen[to] && !done[to] && net.Pieces[piece].Metres < nearest[to])
                {
                    (nearest[to], by[to]) = (net.Pieces[piece].Metres, piece);
                    queue.Enqueue(to, (nearest[to], to));
                }
            }
        }

        for (var j = 0; j < net.Junctions; j++)
        {
            if (isTerminal[j] && !done[j])
            {
                return null;
            }
        }

        var pieces = ImmutableArray.CreateBuilder<int>();
        for (var i = order.Count - 1; i > 0; i--)
        {
            var (at, piece) = (order[i], by[order[i]]);
            if (!isTerminal[at] && degree[at] == 1)
            {
                degree[net.Pieces[piece].From]--;
                degree[net.Pieces[piece].To]--;
            }
            else
            {
                pieces.Add(piece);
            }
        }

        return pieces.ToImmutable();
    }
}
