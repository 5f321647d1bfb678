using System.Collections.Immutable;
using Duskwright.Circuits.Faulting;

namespace Duskwright.Circuits.Tests.Faulting;

/// <summary>Faults that nothing seen at the bank can tell apart.</summary>
internal static class FaultClasses
{
    private const int Sound = 0;

    /// <summary>Sorts faults into classes.</summary>
    /// <param name="sound">The circuit without a fault.</param>
    /// <param name="faulty">The effects of the faults.</param>
    /// <param name="view">How finely the circuit is looked at.</param>
    /// <returns>
    /// Which faults show nothing at all, and the classes of the others, the largest first, by place among the effects. Two faults are of
    /// one class when every lamp looks alike (lit, dim or dark) and a chain of faults leads from one to the other in which each is
    /// within the view of the next; so faults of two classes differ for certain.
    /// </returns>
    public static (ImmutableArray<int> Unseen, ImmutableArray<ImmutableArray<int>> Classes) Of(FaultEffect sound, ImmutableArray<FaultEffect> faulty, BankView view)
    {
        // The sound circuit is sorted with the faulty ones, as the first of all.
        FaultEffect[] all = [sound, .. faulty];
        var classes = Enumerable.Range(0, all.Length)
            .GroupBy(i => Looks(all[i]), StringComparer.Ordinal)
            .SelectMany(alike => Chains([.. alike], all, view))
            .ToList();
        var unseen = classes.Single(c => c.Contains(Sound));
        return (
            [.. unseen.Where(i => i != Sound).Select(i => i - 1).Order()],
            [.. classes.Where(c => c != unseen).Select(c => c.Select(i => i - 1).Order().ToImmutableArray()).OrderByDescending(c => c.Length).ThenBy(c => c[0])]);
    }

    private static string Looks(FaultEffect effect) => string.Create(effect.LightShares.Length, effect.LightShares, (looks, shares) =>
    {
        for (var i = 0; i < looks.Length; i++)
        {
            looks[i] = shares[i] switch { < BankView.DarkShare => 'x', < BankView.DimShare => '-', _ => 'o' };
        }
    });

    // In the order of the first pack's current only those next to one another need be compared.
    private static IEnumerable<List<int>> Chains(int[] alike, FaultEffect[] all, BankView view)
    {
        Array.Sort(alike, (a, b) => all[a].PackAmps[0].CompareTo(all[b].PackAmps[0]));
        var group = Enumerable.Range(0, alike.Length).ToArray();
        int Root(int i)
        {
            while (group[i] != i)
            {
                i = group[i] = group[group[i]];
            }

            return i;
        }

        for (var i = 0; i < alike.Length; i++)
        {
            for (var j = i - 1; j >= 0 && all[alike[i]].PackAmps[0] - all[alike[j]].PackAmps[0] < view.Amps; j--)
            {
                if (Root(i) != Root(j) && Within(all[alike[i]], all[alike[j]], view))
                {
                    group[Root(i)] = Root(j);
                }
            }
        }

        return Enumerable.Range(0, alike.Length).GroupBy(Root, i => alike[i]).Select(g => g.ToList());
    }

    private static bool Within(FaultEffect one, FaultEffect other, BankView view) =>
        one.PackAmps.Zip(other.PackAmps).All(p => Math.Abs(p.First - p.Second) < view.Amps)
        && one.PackVolts.Zip(other.PackVolts).All(p => Math.Abs(p.First - p.Second) < view.Volts);
}
