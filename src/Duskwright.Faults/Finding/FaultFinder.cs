using System.Collections.Immutable;
using Duskwright.Faults.Signatures;

namespace Duskwright.Faults.Finding;

/// <summary>Ranks what may be wrong by what was seen from outside, with or without a meter: Bayes' rule over no fault, one, and plausible pairs.</summary>
public static class FaultFinder
{
    // Readings within a tenth of one another do not tell two faults apart (common practice, no source).
    private const double ReadingShare = 0.1;

    // A meter's leads and touching points add some tenths of an ohm; assumed.
    private const double LeadOhms = 0.5;

    // A look that tells less than this is not worth the walk.
    private const double LeastBits = 0.01;

    /// <summary>Ranks the faults of a network.</summary>
    /// <param name="table">What every fault would show.</param>
    /// <param name="seen">What was seen and read.</param>
    /// <param name="meter">Whether a meter is at hand; without one no current is asked for.</param>
    /// <param name="priors">What is taken for granted; the usual where it is left out.</param>
    /// <param name="pairs">The pairs whose resistance may be asked for; none without a meter.</param>
    /// <returns>All faults, the likeliest first, and the best next look.</returns>
    public static FaultRanking Rank(SignatureTable table, Observation seen, bool meter, FaultPriors? priors = null, IReadOnlyList<PairToRead>? pairs = null)
    {
        var given = priors ?? FaultPriors.Usual;
        var weights = new Hypotheses(table, seen, given);
        var (singles, two) = (weights.Singles.Sum(), weights.Pairs.Sum(p => p.Weight));
        var all = weights.Healthy + singles + two;
        var ranked = table.Rows
            .Select((row, i) => new RankedFault(row.Fault, row.Signature, weights.Singles[i] / singles, weights.Explains(i)))
            .OrderByDescending(f => f.Share)
            .ToImmutableArray();
        return new FaultRanking(ranked, Best(table, seen, meter, ranked, given, pairs ?? []))
        {
            NextByEye = Best(table, seen, false, ranked, given, []),
            Healthy = weights.Healthy / all,
            OneFault = singles / all,
            Pairs = [.. weights.Pairs.OrderByDescending(p => p.Weight).Select(p => new RankedPair(table.Rows[p.One].Fault, table.Rows[p.Other].Fault, p.Weight / all))],
        };
    }

    private static NextLook? Best(SignatureTable table, Observation seen, bool meter, ImmutableArray<RankedFault> ranked, FaultPriors given, IReadOnlyList<PairToRead> pairs)
    {
        var lamps = table.Tagged.Lamps
            .Select((lamp, i) => (lamp, i))
            .Where(x => !seen.Looks.ContainsKey(x.i))
            .Select(x => (Look: new NextLook(LookKind.SeeLamp, x.lamp.Name, x.i, Bits(ranked.GroupBy(f => (int)f.Signature.Look(x.i)))), Minutes: given.LookMinutes));
        var packs = table.Tagged.Packs
            .Select((pack, i) => (pack, i))
            .Where(x => meter && !seen.Readings.ContainsKey(x.i))
            .Select(x => (Look: new NextLook(LookKind.ReadPack, x.pack.Name, x.i, Bits(ByReading(ranked, f => f.Signature.PackAmps[x.i], 0))), Minutes: given.ReadMinutes));
        var ohms = pairs.Select((pair, i) => (Look: new NextLook(LookKind.ReadPairOhms, pair.Name, i, Bits(ByReading(ranked, f => pair.Shows(f.Fault) ?? double.PositiveInfinity, LeadOhms))), Minutes: given.PairMinutes));
        return lamps.Concat(packs).Concat(ohms).Where(x => x.Look.Bits > LeastBits).OrderByDescending(x => x.Look.Bits / x.Minutes).Select(x => x.Look).FirstOrDefault();
    }

    /// <summary>Expected information of a look whose answers part the faults into groups (Shannon's entropy of the answer).</summary>
    private static double Bits(IEnumerable<IEnumerable<RankedFault>> answers) =>
        answers.Select(group => group.Sum(f => f.Share)).Where(share => share > 0).Sum(share => -share * Math.Log2(share));

    private static List<List<RankedFault>> ByReading(ImmutableArray<RankedFault> ranked, Func<RankedFault, double> shown, double apart)
    {
        var groups = new List<List<RankedFault>>();
        var lowest = double.NaN;
        foreach (var fault in ranked.OrderBy(shown))
        {
            var value = shown(fault);
            if (groups.Count == 0 || value - lowest > apart + (ReadingShare * Math.Abs(value)) || (double.IsInfinity(value) && !double.IsInfinity(lowest)))
            {
                groups.Add([]);
                lowest = value;
            }

            groups[^1].Add(fault);
        }

        return groups;
    }
}
