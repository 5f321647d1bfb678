using System.Collections.Immutable;
using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Tests.Faulting;

namespace Duskwright.Benchmarks;

/// <summary>A street plan of lamps: each on a pair of its own that comes from the bank or from a lamp before it, two wires of the pair, one own resistor and one LED per lamp.</summary>
internal static class LampTree
{
    private const int Seed = 20_417;

    // White: V = 2.70 + 0.055·ln(I/1 mA) + 12 Ω·(I − 1 mA), common practice, no source.
    private static readonly LedLaw White = new(2.70, 1e-3, 2.18, 12);

    /// <summary>A tree.</summary>
    /// <param name="lamps">Number of lamps.</param>
    /// <param name="branch">Lamp 1, 2, 3 … → the lamp its pair comes from, 0 for the bank; given a source of chance.</param>
    internal static Network Of(int lamps, Func<int, Random, int> branch)
    {
        var parents = new int[lamps + 1];
        var behind = new int[lamps + 1];
        var chance = new Random(Seed);
        for (var lamp = 1; lamp <= lamps; lamp++)
        {
            parents[lamp] = branch(lamp, chance);
        }

        for (var lamp = lamps; lamp >= 1; lamp--)
        {
            behind[lamp]++;
            behind[parents[lamp]] += behind[lamp];
        }

        var random = new Random(Seed);
        var elements = new Element[1 + (3 * lamps)];

        // So stout a supply and so fine a street that the last lamps still glow.
        elements[0] = new SourceElement("supply", 1, 0, 5, 0.05 / lamps);
        for (var lamp = 1; lamp <= lamps; lamp++)
        {
            var from = parents[lamp];
            var (plus, minus) = (2 * lamp, (2 * lamp) + 1);
            var (feedPlus, feedMinus) = from == 0 ? (1, 0) : (2 * from, (2 * from) + 1);
            var pairOhms = 20 * (0.5 + random.NextDouble()) / behind[lamp];
            elements[(3 * lamp) - 2] = new ResistorElement($"plus {lamp}", feedPlus, plus, pairOhms);
            elements[(3 * lamp) - 1] = new ResistorElement($"minus {lamp}", minus, feedMinus, pairOhms);
            elements[3 * lamp] = new LampElement($"lamp {lamp}", plus, minus, White with { RefVolts = 2.65 + (0.1 * random.NextDouble()) }, 390 + (430 * random.NextDouble()));
        }

        return new Network((2 * lamps) + 2, [.. elements]);
    }

    /// <summary>The pairs of a tree, one a lamp.</summary>
    internal static ImmutableArray<WirePair> Pairs(int lamps) =>
        [.. Enumerable.Range(1, lamps).Select(lamp => new WirePair($"pair {lamp}", (3 * lamp) - 2, (3 * lamp) - 1, 2 * lamp, (2 * lamp) + 1))];

    /// <summary>Every pair comes from the bank.</summary>
    internal static int FromBank(int lamp, Random random) => 0;

    /// <summary>Streets of twenty houses, each house fed from the one before it.</summary>
    internal static int Streets(int lamp, Random random) => lamp % 20 == 1 ? 0 : lamp - 1;

    /// <summary>Every pair feeds two more.</summary>
    internal static int Twos(int lamp, Random random) => lamp / 2;

    /// <summary>Every pair comes from any lamp before it or the bank.</summary>
    internal static int Anywhere(int lamp, Random random) => random.Next(lamp);
}
