using System.Collections.Immutable;

namespace Duskwright.Harness.Trunks;

/// <summary>A lower bound for a trunk, by dual ascent, with the cuts that give it.</summary>
/// <remarks>R. T. Wong, A dual ascent approach for Steiner tree problems on a directed graph, Mathematical Programming 28 (1984) 271-287. Arc 2i runs piece i forwards, arc 2i + 1 backwards.</remarks>
internal static class DualAscent
{
    internal static (double Metres, List<int[]> Cuts, double[] Reduced) Run(WireNet net, ImmutableArray<int> terminals)
    {
        var reduced = net.Pieces.SelectMany(p => new[] { p.Metres, p.Metres }).ToArray();
        var root = terminals[0];
        var cuts = new List<int[]>();
        var bound = 0.0;
        var queue = new PriorityQueue<int, (int, int)>(terminals.Skip(1).Select(t => (t, (1, t))));
        while (queue.TryDequeue(out var terminal, out _))
        {
            var (side, entering) = Side(net, reduced, terminal);
            if (side[root])
            {
                continue;
            }

            var rise = entering.Min(a => reduced[a]);
            foreach (var arc in entering)
            {
                reduced[arc] -= rise;
            }

            bound += rise;
            cuts.Add(entering);
            queue.Enqueue(terminal, (entering.Length, terminal));
        }

        return (bound, cuts, reduced);
    }

    // Junctions from which the terminal is reached over arcs already paid for, and the arcs that enter that set.
    private static (bool[] Side, int[] Entering) Side(WireNet net, double[] reduced, int terminal)
    {
        var side = new bool[net.Junctions];
        var stack = new Stack<int>([terminal]);
        var members = new List<int>();
        side[terminal] = true;
        while (stack.TryPop(out var at))
        {
            members.Add(at);
            foreach (var (from, piece) in net.Around[at])
            {
                if (!side[from] && reduced[ArcInto(net, piece, at)] <= 1e-12)
                {
                    side[from] = true;
                    stack.Push(from);
                }
            }
        }

        return (side, [.. members.SelectMany(at => net.Around[at].Where(n => !side[n.To]).Select(n => ArcInto(net, n.Piece, at)))]);
    }

    internal static int ArcInto(WireNet net, int piece, int junction) => (2 * piece) + (net.Pieces[piece].To == junction ? 0 : 1);

    internal static int Head(WireNet net, int arc) => arc % 2 == 0 ? net.Pieces[arc / 2].To : net.Pieces[arc / 2].From;

    internal static int Tail(WireNet net, int arc) => arc % 2 == 0 ? net.Pieces[arc / 2].From : net.Pieces[arc / 2].To;
}
