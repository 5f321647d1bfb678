using System.Collections.Immutable;
using Duskwright.Harness.Sharing;

namespace Duskwright.Harness.Cutting;

/// <summary>Reels cut one after another, each to the last millimetre that the leads left over allow: the longest lead that is left, and with it what fills the reel best.</summary>
/// <remarks>The subset sum of each reel is exact (S. Martello and P. Toth, Knapsack Problems, Wiley 1990, chapter 4); what all reels together take is not.</remarks>
internal static class FullestReels
{
    /// <summary>Cuts the leads.</summary>
    /// <param name="kinds">Length and number of the reels of each kind, in the order in which they are begun.</param>
    /// <param name="lengths">The length of each lead, mm.</param>
    /// <returns>Each reel's kind and leads; none where the reels do not hold them all.</returns>
    internal static ImmutableArray<FilledPack>? Cut(IEnumerable<(int Millimetres, int OnHand)> kinds, IReadOnlyList<int> lengths)
    {
        var left = lengths.Select((mm, i) => (mm, i)).GroupBy(x => x.mm, x => x.i).OrderByDescending(g => g.Key).Select(g => (Length: g.Key, Leads: new Queue<int>(g))).ToList();
        var reels = ImmutableArray.CreateBuilder<FilledPack>();
        foreach (var (kind, (millimetres, onHand)) in kinds.Index())
        {
            for (var reel = 0; reel < onHand && left.FindIndex(c => c.Length <= millimetres) is >= 0 and var longest; reel++)
            {
                var first = left[longest].Leads.Dequeue();
                var counts = Fill(millimetres - left[longest].Length, left);
                reels.Add(new FilledPack(kind, [.. counts.SelectMany((n, c) => Enumerable.Range(0, n).Select(_ => left[c].Leads.Dequeue())).Append(first).Order()]));
                left.RemoveAll(c => c.Leads.Count == 0);
            }
        }

        return left.Count == 0 ? reels.ToImmutable() : null;
    }

    // How many of each length fill the room best; among equals the longer ones.
    private static int[] Fill(int room, List<(int Length, Queue<int> Leads)> left)
    {
        var by = new int[room + 1];
        Array.Fill(by, -1);
        for (var c = 0; c < left.Count; c++)
        {
            var (length, most) = (left[c].Length, left[c].Leads.Count);
            var used = new int[room + 1];
            for (var sum = length; sum <= room; sum++)
            {
                var before = sum - length;
                if (by[sum] < 0 && (before == 0 || by[before] >= 0) && used[before] < most)
                {
                    (by[sum], used[sum]) = (c, used[before] + 1);
                }
            }
        }

        var counts = new int[left.Count];
        for (var sum = Array.FindLastIndex(by, c => c >= 0); sum > 0; sum -= left[by[sum]].Length)
        {
            counts[by[sum]]++;
        }

        return counts;
    }
}
