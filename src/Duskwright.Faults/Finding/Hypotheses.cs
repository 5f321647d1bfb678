using System.Collections.Immutable;
using Duskwright.Circuits.Networks;
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

    // An ammeter in line takes up to so much; typical, from memory.
    private const double MostBurdenOhms = 2;

    private const double LeastShare = 0.1;
    private const double LeastVolts = 1e-3;
    private const double ExplainingDeviations = 2.8;

    private readonly SignatureTable _table;
    private readonly FaultPriors _priors;
    private readonly (int Lamp, LampLook Look)[] _looks;
    private readonly (int Pack, AmpsReading Reading)[] _readings;
    private readonly (int Pack, double Volts)? _volts;
    private readonly SignaturesAtVolts? _atVolts;
    private readonly PackAge _likelyAge;
    private readonly double _allWeights;
    private readonly ImmutableArray<PairFinding> _offBank;

    internal Hypotheses(SignatureTable table, Observation seen, FaultPriors priors)
    {
        (_table, _priors, _offBank) = (table, priors, seen.OffBank);
        _looks = [.. seen.Looks.OrderBy(l => l.Key).Select(l => (l.Key, l.Value))];
        _readings = [.. seen.Readings.OrderBy(r => r.Key).Select(r => (r.Key, r.Value))];
        foreach (var (pack, reading) in seen.Volts.OrderBy(v => v.Key).Where(v => v.Value.LeastVolts > 0).Take(1))
        {
            var (volts, error) = ((reading.LeastVolts + reading.MostVolts) / 2, (reading.MostVolts - reading.LeastVolts) / 2);
            (_volts, _atVolts) = ((pack, volts), SignaturesAtVolts.Of(table, pack, volts, error));
        }

        _allWeights = table.Rows.Sum(r => priors.Weights[r.Fault.Kind]);
        var well = Shown(_atVolts?.Healthy ?? table.Healthy, table.Healthy, FaultKind.LampDead);
        Healthy = priors.Healthy * Agreement(well);
        Singles = [.. table.Rows.Select((r, i) => (1 - priors.Healthy - priors.Two) * Before(r) * Agreement(i) * OffBank(r.Fault))];
        _likelyAge = _atVolts is not null ? table.Ages[0] : table.Ages.MaxBy(age => Agreement(well, age))!;
        Pairs = [.. Likely()];
    }

    internal double Healthy { get; }

    /// <summary>Weights in the order of the table.</summary>
    internal ImmutableArray<double> Singles { get; }

    internal ImmutableArray<(int One, int Other, double Weight)> Pairs { get; }

    /// <summary>Whether a fault shows just what was seen, and can give what was read on some cells, or on those volts.</summary>
    internal bool Explains(int place)
    {
        var (row, shown) = (_table.Rows[place], Shown(place));
        return _offBank.All(f => f.Allows(row.Fault)) && _looks.All(l => row.Signature.Look(l.Lamp) == l.Look) && _readings.All(r =>
        {
            var ages = _atVolts is null ? _table.Ages : [_table.Ages[0]];
            var factor = Math.Exp(ExplainingDeviations * Spread(r.Pack, ages[0]));
            return ages.Min(a => Amps(shown, r.Pack, a)) / factor <= r.Reading.MostAmps && ages.Max(a => Amps(shown, r.Pack, a)) * factor >= r.Reading.LeastAmps;
        });
    }

    private double Before(FaultSignature row) => _priors.Weights[row.Fault.Kind] / _allWeights;

    // Against all well; what two faults behind one pair do to a reading multiplies, since one of them leaves it as it is.
    private double OffBank(Fault fault) => _offBank.Aggregate(1.0, (p, finding) => p * finding.Of(fault));

    private double Agreement(int place)
    {
        var (row, shown, sound) = (_table.Rows[place], Shown(place), _atVolts?.Healthy ?? _table.Healthy);

        // On the volts that were read a flat cell is no longer flatter or less flat.
        var severity = row.Fault.Kind == FaultKind.CellFlat && _atVolts is not null ? 0 : Likelihood.Severity(row.Fault.Kind);
        if (_atVolts is null && _table.ShortsByAge.TryGetValue(place, out var aged))
        {
            return aged.Average(now => Agreement(Shown(now, row.Signature, row.Fault.Kind), _table.Ages[0]));
        }

        if (severity == 0)
        {
            return Agreement(shown);
        }

        // The better or worse the joint, the more or less light, current and volts all behind it lose.
        bool Touched(int lamp) => shown.Light[lamp] < sound.LightShares[lamp] * (1 - Untouched);
        var touched = Enumerable.Range(0, shown.Light.Length).Where(Touched).Select(i => shown.Light[i] / sound.LightShares[i]).DefaultIfEmpty(1).Average();
        return Likelihood.Nodes.Sum(node =>
        {
            var factor = Math.Exp(severity * node.At);
            var lost = touched < 1 ? Math.Clamp((1 - (touched * factor)) / (1 - touched), 0, 1 / (1 - touched)) : 1;
            ImmutableArray<double> Lost(ImmutableArray<double> faulty, ImmutableArray<double> whole) => [.. faulty.Zip(whole, (f, w) => w + ((f - w) * lost))];
            return node.Weight * Agreement(shown with
            {
                Light = [.. shown.Light.Select((s, i) => Touched(i) ? Math.Min(sound.LightShares[i], s * factor) : s)],
                Amps = Lost(shown.Amps, sound.PackAmps),
                PlannedVolts = Lost(shown.PlannedVolts, _table.Healthy.PackVolts),
            });
        });
    }

    private Expected Shown(int place) => Shown(_atVolts?.Rows[place] ?? _table.Rows[place].Signature, _table.Rows[place].Signature, _table.Rows[place].Fault.Kind);

    private Expected Shown(Signature now, Signature planned, FaultKind kind)
    {
        var sound = _atVolts?.Healthy ?? _table.Healthy;
        ImmutableArray<double> added = [.. now.PackAmps.Zip(sound.PackAmps, (a, s) => Math.Max(0, a - s))];
        return new Expected(now.LightShares, now.PackAmps, added, [.. added.Select(a => a * Likelihood.AddedSpread(kind))], planned.PackAmps, planned.PackVolts);
    }

    private double Agreement(Expected shown)
    {
        if (_atVolts is not null)
        {
            return Reach(shown) * Agreement(shown, _table.Ages[0]);
        }

        return _table.Ages.Average(age => Agreement(shown, age));
    }

    private double Agreement(Expected shown, PackAge age)
    {
        var p = 1.0;
        foreach (var (lamp, look) in _looks)
        {
            p *= Likelihood.Of(look, shown.Light[lamp] * age.Light[lamp], _priors.Misread);
        }

        foreach (var (pack, reading) in _readings)
        {
            var (amps, added) = (Amps(shown, pack, age), shown.AddedDeviation[pack] * age.Volts[pack]);
            var parts = Spread(pack, age) * Math.Max(0, amps - (shown.Added[pack] * age.Volts[pack]));
            p *= Likelihood.Of(reading, amps, Math.Sqrt((parts * parts) + (added * added)));
        }

        return p;
    }

    // What lamps take falls with the cells as the lamps' law says, what a short takes as the volts do.
    private static double Amps(Expected shown, int pack, PackAge age) =>
        ((shown.Amps[pack] - shown.Added[pack]) * age.Amps[pack]) + (shown.Added[pack] * age.Volts[pack]);

    // What a lamp's volts or the meter's error move grows as less is left over the lamp: as one over the current.
    private double Spread(int pack, PackAge age) => _volts?.Pack == pack ? _atVolts!.Deviation : _table.AmpsSpread[pack] / Math.Max(LeastShare, age.Amps[pack]);

    // Density of the volts' logarithm: even between the fullest cells and the emptiest behind an ammeter, with a tail either way.
    private double Reach(Expected shown)
    {
        var (pack, read) = _volts!.Value;
        var source = (SourceElement)_table.Tagged.Network.Elements[_table.Tagged.Packs[pack].Source];
        var most = Math.Max(LeastVolts, shown.PlannedVolts[pack]);
        var least = most * _table.Ages[^1].Volts[pack] / (1 + (MostBurdenOhms * shown.PlannedAmps[pack] / source.OpenVolts));
        var beyond = Math.Max(0, Math.Max(Math.Log(read / most), Math.Log(least / read))) / VoltsDeviation;
        return Likelihood.Tail(beyond) / (Math.Log(most / least) + VoltsDeviation);
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

                yield return (candidates[a], candidates[b], _priors.Two * 2 * Before(one) * Before(other) * OffBank(one.Fault) * OffBank(other.Fault) * Agreement(Both(Shown(candidates[a]), Shown(candidates[b]))));
            }
        }
    }

    private Expected Both(Expected x, Expected y)
    {
        var sound = _atVolts?.Healthy ?? _table.Healthy;
        static ImmutableArray<double> Sum(ImmutableArray<double> p, ImmutableArray<double> q, ImmutableArray<double> whole) => [.. p.Select((v, i) => Math.Max(0, v + q[i] - whole[i]))];
        return new Expected(
            [.. x.Light.Select((p, i) => sound.LightShares[i] > 0 ? p * y.Light[i] / sound.LightShares[i] : 0)],
            Sum(x.Amps, y.Amps, sound.PackAmps),
            [.. x.Added.Zip(y.Added, (p, q) => p + q)],
            [.. x.AddedDeviation.Zip(y.AddedDeviation, double.Hypot)],
            Sum(x.PlannedAmps, y.PlannedAmps, _table.Healthy.PackAmps),
            Sum(x.PlannedVolts, y.PlannedVolts, _table.Healthy.PackVolts));
    }

    // How much better the lamps that a fault touches agree with it than with all being well, on the cells that agree best with that.
    private double Gain(int row)
    {
        var (shares, sound) = (Shown(row).Light, _atVolts?.Healthy.LightShares ?? _table.Healthy.LightShares);
        return Math.Log(Before(_table.Rows[row]) * OffBank(_table.Rows[row].Fault)) + _looks.Where(l => Math.Abs(shares[l.Lamp] - sound[l.Lamp]) > Untouched * sound[l.Lamp])
            .Sum(l => Math.Log(Likelihood.Of(l.Look, shares[l.Lamp] * _likelyAge.Light[l.Lamp], _priors.Misread)) - Math.Log(Likelihood.Of(l.Look, sound[l.Lamp] * _likelyAge.Light[l.Lamp], _priors.Misread)));
    }

    /// <summary>What is expected.</summary>
    /// <param name="Light">Light of each lamp as a share of what it should give.</param>
    /// <param name="Amps">Current of each pack, A.</param>
    /// <param name="Added">How much of it a short adds, A.</param>
    /// <param name="AddedDeviation">Deviation of what the short adds, A.</param>
    /// <param name="PlannedAmps">Current on the planned cells, A.</param>
    /// <param name="PlannedVolts">Volts of each pack on the planned cells, V.</param>
    private readonly record struct Expected(
        ImmutableArray<double> Light, ImmutableArray<double> Amps, ImmutableArray<double> Added, ImmutableArray<double> AddedDeviation, ImmutableArray<double> PlannedAmps, ImmutableArray<double> PlannedVolts);
}
