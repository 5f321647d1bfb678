using System.Collections.Immutable;
using Duskwright.Faults.Signatures;

namespace Duskwright.Faults.Finding;

/// <summary>Ranks single faults by what was seen from outside, with or without a meter.</summary>
public static class FaultFinder
{
    // Readings within a tenth of one another do not tell two faults apart (common practice, no source).
    private const double ReadingShare = 0.1;

    // A look that tells less than this is not worth the walk.
    private const double LeastBits = 0.01;

    /// <summary>Ranks the faults of a network.</summary>
    /// <param name="table">What every fault would show.</param>
    /// <param name="seen">What was seen and read.</param>
    /// <param name="meter">Whether a meter is at hand; without one no reading is asked for.</param>
    /// <returns>All faults, the likeliest first, and the best next look.</returns>
    public static FaultRanking Rank(SignatureTable table, Observation seen, bool meter)
    {
        var weights = table.Rows.Select(row => Likelihood.Before(row.Fault.Kind) * Agreement(row.Signature, seen)).ToArray();
        var all = weights.Sum();
        var ranked = table.Rows
            .Select((row, i) => new RankedFault(row.Fault, row.Signature, weights[i] / all, Explains(row.Signature, seen)))
            .OrderByDescending(f => f.Share)
            .ToImmutableArray();
        return new FaultRanking(ranked, Best(table, seen, meter, ranked));
    }

    private static double Agreement(Signature signature, Observation seen) =>
        seen.Looks.OrderBy(l => l.Key).Aggregate(1.0, (p, look) => p * Likelihood.Of(look.Value, signature.Look(look.Key)))
        * seen.Readings.OrderBy(r => r.Key).Aggregate(1.0, (p, reading) => p * Likelihood.Of(reading.Value, signature.PackAmps[reading.Key]));

    private static bool Explains(Signature signature, Observation seen) =>
        seen.Looks.All(look => signature.Look(look.Key) == look.Value)
        && seen.Readings.All(r => signature.PackAmps[r.Key] >= r.Value.LeastAmps && signature.PackAmps[r.Key] <= r.Value.MostAmps);

    private static NextLook? Best(SignatureTable table, Observation seen, bool meter, ImmutableArray<RankedFault> ranked)
    {
        var lamps = table.Tagged.Lamps
            .Select((lamp, i) => (lamp, i))
            .Where(x => !seen.Looks.ContainsKey(x.i))
            .Select(x => new NextLook(LookKind.SeeLamp, x.lamp.Name, x.i, Bits(ranked.GroupBy(f => (int)f.Signature.Look(x.i)))));
        var packs = table.Tagged.Packs
            .Select((pack, i) => (pack, i))
            .Where(x => meter && !seen.Readings.ContainsKey(x.i))
            .Select(x => new NextLook(LookKind.ReadPack, x.pack.Name, x.i, Bits(ByReading(ranked, x.i))));
        var best = lamps.Concat(packs).MaxBy(look => look.Bits);
        return best is { Bits: > LeastBits } ? best : null;
    }

    /// <summary>Expected information of a look whose answers part the faults into groups (Shannon's entropy of the answer).</summary>
    private static double Bits(IEnumerable<IEnumerable<RankedFault>> answers) =>
        answers.Select(group => group.Sum(f => f.Share)).Where(share => share > 0).Sum(share => -share * Math.Log2(share));

    private static List<List<RankedFault>> ByReading(ImmutableArray<RankedFault> ranked, int pack)
    {
        var groups = new List<List<RankedFault>>();
        var lowest = double.NaN;
        foreach (var fault in ranked.OrderBy(f => f.Signature.PackAmps[pack]))
        {
            var amps = fault.Signature.PackAmps[pack];
            if (groups.Count == 0 || amps - lowest > ReadingShare * Math.Abs(amps))
            {
                groups.Add([]);
                lowest = amps;
            }

            groups[^1].Add(fault);
        }

        return groups;
    }
}
