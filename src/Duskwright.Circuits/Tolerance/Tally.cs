using System.Collections.Immutable;
using Duskwright.Circuits.Fitting;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Tolerance;

/// <summary>What all draws came to. Draws may be noted from several threads; each has its own places.</summary>
internal sealed class Tally(int[] lamps, ImmutableArray<Neighbours> neighbours, ImmutableArray<Probe> probes, int draws)
{
    // By lamp, probe or group, then by draw.
    private readonly double[][] _lampAmps = Rows(lamps.Length, draws);
    private readonly double[][] _probed = Rows(probes.Length, draws);
    private readonly double[][] _greatest = Rows(neighbours.Length, draws);
    private readonly double[][] _pairsDiffer = Rows(neighbours.Length, draws);
    private readonly bool[][] _anyDiffers = [.. neighbours.Select(_ => new bool[draws])];
    private readonly bool[][] _overloaded = [.. neighbours.Select(_ => new bool[draws])];

    internal void Note(int draw, Network drawn, Solution solution, Func<int, double> lightShare)
    {
        for (var i = 0; i < lamps.Length; i++)
        {
            _lampAmps[i][draw] = solution.ElementAmps[lamps[i]];
        }

        for (var i = 0; i < probes.Length; i++)
        {
            var probe = probes[i];
            _probed[i][draw] = probe.Element is { } element ? solution.ElementAmps[element] : solution.NodeVolts[probe.Plus] - solution.NodeVolts[probe.Minus];
        }

        for (var i = 0; i < neighbours.Length; i++)
        {
            NoteGroup(i, draw, drawn, solution, lightShare);
        }
    }

    internal ToleranceResult Result() => new(
        draws,
        [.. _lampAmps.Select(Range)],
        [.. neighbours.Select((n, i) => new NeighbourSpread(n.Name, _pairsDiffer[i].Average(), Share(_anyDiffers[i]), Range(_greatest[i]), Share(_overloaded[i])))],
        [.. probes.Select((p, i) => new ProbeSpread(p.Name, Range(_probed[i])))]);

    private static double[][] Rows(int rows, int draws) => [.. Enumerable.Range(0, rows).Select(_ => new double[draws])];

    private static double Share(bool[] happened) => happened.Count(h => h) / (double)happened.Length;

    private static Estimate Range(double[] values)
    {
        var sorted = (double[])values.Clone();
        Array.Sort(sorted);
        double At(double share) => sorted[Math.Min(sorted.Length - 1, (int)(share * sorted.Length))];
        return new Estimate(At(0.05), At(0.5), At(0.95));
    }

    private void NoteGroup(int group, int draw, Network drawn, Solution solution, Func<int, double> lightShare)
    {
        var members = neighbours[group].Lamps;
        var lights = new double[members.Length];
        var (sum, most, brightest, pairs) = (0.0, 0.0, 0.0, 0);
        for (var m = 0; m < members.Length; m++)
        {
            var lamp = (LampElement)drawn.Elements[members[m]];
            var amps = solution.ElementAmps[members[m]];
            lights[m] = lightShare(members[m]) * lamp.Law.At(solution.NodeVolts[lamp.A] - solution.NodeVolts[lamp.B], lamp.ResistorOhms).Light;
            (sum, most, brightest) = (sum + amps, Math.Max(most, amps), Math.Max(brightest, lights[m]));
            pairs += m > 0 && LightnessDifference.Between(lights[m], lights[m - 1]) > LightnessDifference.Visible ? 1 : 0;
        }

        _greatest[group][draw] = sum > 0 ? most * members.Length / sum : 1;
        _pairsDiffer[group][draw] = pairs / (members.Length - 1.0);
        _anyDiffers[group][draw] = lights.Any(l => LightnessDifference.Between(l, brightest) > LightnessDifference.Visible);
        _overloaded[group][draw] = most > neighbours[group].MostAmps;
    }
}
