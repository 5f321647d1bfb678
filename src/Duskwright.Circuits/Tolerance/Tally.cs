using System.Collections.Immutable;
using System.Numerics;
using Duskwright.Circuits.Fitting;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Tolerance;

/// <summary>What all draws came to. Draws may be noted from several threads; each has its own places.</summary>
internal sealed class Tally
{
    private readonly int[] _lamps;
    private readonly ImmutableArray<Neighbours> _neighbours;
    private readonly ImmutableArray<Probe> _probes;
    private readonly int _draws;

    // By lamp, probe or group, then by draw, filled up to whole vectors.
    private readonly double[][] _lampAmps;
    private readonly double[][] _probed;
    private readonly double[][] _greatest;
    private readonly double[][] _pairsDiffer;
    private readonly bool[][] _anyDiffers;
    private readonly bool[][] _overloaded;

    internal Tally(int[] lamps, ImmutableArray<Neighbours> neighbours, ImmutableArray<Probe> probes, int draws)
    {
        (_lamps, _neighbours, _probes, _draws) = (lamps, neighbours, probes, draws);
        T[][] Rows<T>(int rows) => [.. Enumerable.Range(0, rows).Select(_ => new T[(draws + LaneValues.Lanes - 1) / LaneValues.Lanes * LaneValues.Lanes])];
        _lampAmps = Rows<double>(lamps.Length);
        _probed = Rows<double>(probes.Length);
        _greatest = Rows<double>(neighbours.Length);
        _pairsDiffer = Rows<double>(neighbours.Length);
        _anyDiffers = Rows<bool>(neighbours.Length);
        _overloaded = Rows<bool>(neighbours.Length);
    }

    /// <summary>Notes the draws that were solved side by side.</summary>
    /// <param name="firstDraw">The first of them.</param>
    /// <param name="solved">Their solutions.</param>
    /// <param name="lightShares">Light of a lamp against one of the middle, at the same current.</param>
    internal void Note(int firstDraw, LaneSolver solved, Func<int, Vector<double>> lightShares)
    {
        for (var i = 0; i < _lamps.Length; i++)
        {
            solved.ElementAmps[_lamps[i]].CopyTo(_lampAmps[i], firstDraw);
        }

        for (var i = 0; i < _probes.Length; i++)
        {
            var probe = _probes[i];
            var value = probe.Element is { } element ? solved.ElementAmps[element] : solved.NodeVolts[probe.Plus] - solved.NodeVolts[probe.Minus];
            value.CopyTo(_probed[i], firstDraw);
        }

        for (var i = 0; i < _neighbours.Length; i++)
        {
            NoteGroup(i, firstDraw, solved, lightShares);
        }
    }

    internal ToleranceResult Result()
    {
        var lampAmps = new Estimate[_lamps.Length];
        Parallel.For(0, lampAmps.Length, i => lampAmps[i] = Quantiles.Of(_lampAmps[i].AsSpan(0, _draws)));
        return new(
            _draws,
            [.. lampAmps],
            [.. _neighbours.Select((n, i) => new NeighbourSpread(n.Name, _pairsDiffer[i].Take(_draws).Average(), Share(_anyDiffers[i]), Quantiles.Of(_greatest[i].AsSpan(0, _draws)), Share(_overloaded[i])))],
            [.. _probes.Select((p, i) => new ProbeSpread(p.Name, Quantiles.Of(_probed[i].AsSpan(0, _draws))))]);
    }

    private double Share(bool[] happened) => happened.Take(_draws).Count(h => h) / (double)_draws;

    private void NoteGroup(int group, int firstDraw, LaneSolver solved, Func<int, Vector<double>> lightShares)
    {
        var members = _neighbours[group].Lamps;
        var all = new Vector<double>[members.Length];
        for (var m = 0; m < members.Length; m++)
        {
            all[m] = lightShares(members[m]) * solved.Lights(members[m]);
        }

        var lights = new double[members.Length];
        for (var lane = 0; lane < LaneValues.Lanes; lane++)
        {
            var (sum, most, brightest, pairs) = (0.0, 0.0, 0.0, 0);
            for (var m = 0; m < members.Length; m++)
            {
                var amps = solved.ElementAmps[members[m]][lane];
                lights[m] = all[m][lane];
                (sum, most, brightest) = (sum + amps, Math.Max(most, amps), Math.Max(brightest, lights[m]));
                pairs += m > 0 && LightnessDifference.IsVisible(lights[m], lights[m - 1]) ? 1 : 0;
            }

            var draw = firstDraw + lane;
            _greatest[group][draw] = sum > 0 ? most * members.Length / sum : 1;
            _pairsDiffer[group][draw] = pairs / (members.Length - 1.0);
            _anyDiffers[group][draw] = lights.Any(l => LightnessDifference.IsVisible(l, brightest));
            _overloaded[group][draw] = most > _neighbours[group].MostAmps;
        }
    }
}
