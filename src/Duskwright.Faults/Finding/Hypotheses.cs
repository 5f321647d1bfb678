using System.Collections.Immutable;
using Duskwright.Faults.Signatures;

namespace Duskwright.Faults.Finding;

/// <summary>All that may be: nothing wrong, each single fault, and plausible pairs of them, each with its weight given what was seen.</summary>
/// <remarks>What is not known is averaged out: how full the cells are (or read off the volts), how bad a bad joint is, and by its slopes all else.</remarks>
internal sealed class Hypotheses
{
    // A pair is looked at only if each of its faults is among so many that what they darken speaks for most.
    private const int MostInPairs = 30;

    // A lamp within a tenth of its sound light is not touched by a fault.
    private const double Untouched = 0.1;

    // Volts above those of the planned cells, or below those of the emptiest, may still be, a hundredth either way.
    private const double VoltsDeviation = 0.01;

    private const double LeastShare = 0.1;
    private const double ExplainingDeviations = 2.8;

    private readonly SignatureTable _table;
    private readonly FaultPriors _priors;
    private readonly (int Lamp, LampLook Look)[] _looks;
    private readonly (int Pack, AmpsReading Reading)[] _readings;
    private readonly (int Pack, double Volts, double ErrorShare)? _volts;
    private readonly double _allWeights;
    private readonly ImmutableArray<PairFinding> _offBank;

    internal Hypotheses(SignatureTable table, Observation seen, FaultPriors priors)
    {
        (_table, _priors) = (table, priors);
        _looks = [.. seen.Looks.OrderBy(l => l.Key).Select(l => (l.Key, l.Value))];
        _readings = [.. seen.Readings.OrderBy(r => r.Key).Select(r => (r.Key, r.Value))];
        _volts = seen.Volts.OrderBy(v => v.Key).Select(v => ((int, double, double)?)(v.Key, (v.Value.LeastVolts + v.Value.MostVolts) / 2, (v.Value.MostVolts - v.Value.LeastVolts) / (v.Value.MostVolts + v.Value.LeastVolts))).FirstOrDefault();
        _allWeights = table.Rows.Sum(r => priors.Weights[r.Fault.Kind]);
        Healthy = priors.Healthy * Agreement(table.Healthy.LightShares, table.Healthy.PackAmps, table.Healthy.PackVolts);
        _offBank = seen.OffBank;
        Singles = [.. table.Rows.Select(r => (1 - priors.Healthy - priors.Two) * Before(r) * Agreement(r) * OffBank(r.Fault))];
        Pairs = [.. Likely()];
    }

    internal double Healthy { get; }

    /// <summary>Weights in the order of the table.</summary>
    internal ImmutableArray<double> Singles { get; }

    internal ImmutableArray<(int One, int Other, double Weight)> Pairs { get; }

    /// <summary>Whether a fault shows just what was seen, and can give what was read on some cells.</summary>
    internal bool Explains(FaultSignature row)
    {
        var signature = row.Signature;
        var ages = Ages(signature.PackVolts).Select(a => a.Age).ToList();
        return _offBank.All(f => f.Allows(row.Fault)) && _looks.All(l => signature.Look(l.Lamp) == l.Look) && _readings.All(r =>
        {
            var (amps, factor) = (signature.PackAmps[r.Pack], Math.Exp(ExplainingDeviations * _table.AmpsSpread[r.Pack]));
            return ages.Min(a => a.Amps[r.Pack]) * amps / factor <= r.Reading.MostAmps && ages.Max(a => a.Amps[r.Pack]) * amps * factor >= r.Reading.LeastAmps;
        });
    }

    private double Before(FaultSignature row) => _priors.Weights[row.Fault.Kind] / _allWeights;

    // Against all well; what two faults behind one pair do to a reading multiplies, since one of them leaves it as it is.
    private double OffBank(Fault fault) => _offBank.Aggregate(1.0, (p, finding) => p * finding.Of(fault));

    private double Agreement(FaultSignature row)
    {
        var (shown, sound, severity) = (row.Signature, _table.Healthy, Likelihood.Severity(row.Fault.Kind));
        if (severity == 0)
        {
            return Agreement(shown.LightShares, shown.PackAmps, shown.PackVolts);
        }

        // The better or worse the joint, the more or less light, current and volts all behind it lose.
        var touched = shown.LightShares.Where(s => s < 1 - Untouched).DefaultIfEmpty(1).Average();
        return Likelihood.Nodes.Sum(node =>
        {
            var factor = Math.Exp(severity * node.At);
            var lost = touched < 1 ? Math.Clamp((1 - (touched * factor)) / (1 - touched), 0, 1 / (1 - touched)) : 1;
            ImmutableArray<double> Lost(ImmutableArray<double> faulty, ImmutableArray<double> whole) => [.. faulty.Zip(whole, (f, w) => w + ((f - w) * lost))];
            var light = shown.LightShares.Select(s => s < 1 - Untouched ? Math.Min(1, s * factor) : s).ToImmutableArray();
            return node.Weight * Agreement(light, Lost(shown.PackAmps, sound.PackAmps), Lost(shown.PackVolts, sound.PackVolts));
        });
    }

    private double Agreement(ImmutableArray<double> light, ImmutableArray<double> amps, ImmutableArray<double> volts)
    {
        var sum = 0.0;
        foreach (var (age, weight, bend) in Ages(volts))
        {
            var p = weight;
            foreach (var (lamp, look) in _looks)
            {
                p *= Likelihood.Of(look, light[lamp] * age.Light[lamp], _priors.Misread);
            }

            foreach (var (pack, reading) in _readings)
            {
                p *= Likelihood.Of(reading, amps[pack] * age.Amps[pack], Spread(pack, age, bend));
            }

            sum += p;
        }

        return sum;
    }

    // What a lamp's volts or the meter's error move grows as less is left over the lamp: as one over the current.
    private double Spread(int pack, PackAge age, double bend)
    {
        var parts = _table.AmpsSpread[pack] / Math.Max(LeastShare, age.Amps[pack]);
        return Math.Sqrt((parts * parts) + (bend * bend));
    }

    // Volts that were read say how full the cells are; else every age is as likely.
    private IEnumerable<(PackAge Age, double Weight, double Bend)> Ages(ImmutableArray<double> volts)
    {
        var ages = _table.Ages;
        if (_volts is not { } known)
        {
            return ages.Select(a => (a, 1.0 / ages.Length, 0.0));
        }

        var (pack, read, error) = known;
        var ratio = volts[pack] > 0 ? read / volts[pack] : double.PositiveInfinity;
        var beyond = Math.Max(0, Math.Max(ratio - ages[0].Volts[pack], ages[^1].Volts[pack] - ratio)) / VoltsDeviation;
        var i = 1;
        while (i < ages.Length - 1 && ratio < ages[i].Volts[pack])
        {
            i++;
        }

        var age = ages.Length == 1 ? ages[0] : PackAge.Between(ages[i - 1], ages[i], Math.Clamp((ages[i - 1].Volts[pack] - ratio) / (ages[i - 1].Volts[pack] - ages[i].Volts[pack]), -0.5, 1.5));
        var (fuller, emptier) = (ages[Math.Max(0, i - 1)], ages[Math.Min(i, ages.Length - 1)]);
        var slope = ages.Length == 1 ? 0 : Math.Log(fuller.Amps[pack] / Math.Max(LeastShare, emptier.Amps[pack])) / Math.Log(fuller.Volts[pack] / emptier.Volts[pack]);
        return [(age, Likelihood.Tail(beyond), slope * error / Likelihood.LimitDeviations)];
    }

    // Two faults in lamps that do not touch one another darken each its own, and what they add to the current adds up.
    private IEnumerable<(int One, int Other, double Weight)> Likely()
    {
        var candidates = Enumerable.Range(0, _table.Rows.Length).OrderByDescending(Gain).Take(MostInPairs).ToArray();
        for (var a = 0; a < candidates.Length; a++)
        {
            for (var b = a + 1; b < candidates.Length; b++)
            {
                var (one, other) = (_table.Rows[candidates[a]], _table.Rows[candidates[b]]);
                if (one.Fault.Place == other.Fault.Place)
                {
                    continue;
                }

                var (x, y, sound) = (one.Signature, other.Signature, _table.Healthy);
                ImmutableArray<double> Both(ImmutableArray<double> p, ImmutableArray<double> q, ImmutableArray<double> whole) => [.. p.Select((v, i) => Math.Max(0, v + q[i] - whole[i]))];
                yield return (candidates[a], candidates[b], _priors.Two * 2 * Before(one) * Before(other) * OffBank(one.Fault) * OffBank(other.Fault)
                    * Agreement([.. x.LightShares.Zip(y.LightShares, (p, q) => p * q)], Both(x.PackAmps, y.PackAmps, sound.PackAmps), Both(x.PackVolts, y.PackVolts, sound.PackVolts)));
            }
        }
    }

    // How much better the lamps that a fault touches agree with it than with all being well.
    private double Gain(int row)
    {
        var shares = _table.Rows[row].Signature.LightShares;
        return Math.Log(Before(_table.Rows[row]) * OffBank(_table.Rows[row].Fault)) + _looks.Where(l => Math.Abs(shares[l.Lamp] - 1) > Untouched)
            .Sum(l => Math.Log(Likelihood.Of(l.Look, shares[l.Lamp], _priors.Misread)) - Math.Log(Likelihood.Of(l.Look, 1, _priors.Misread)));
    }
}
