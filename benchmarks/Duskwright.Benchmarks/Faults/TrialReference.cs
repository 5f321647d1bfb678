using Duskwright.Circuits.Faulting;
using Duskwright.Faults.Signatures;

namespace Duskwright.Benchmarks.Faults;

/// <summary>The posterior of one who knows how the cases are made: the same draws of parts, the same eyes, the same meter, the true frequencies.</summary>
internal sealed class TrialReference
{
    private const int Draws = 300;
    private const int Looks = 3;

    // Meter and what the draws leave between them.
    private const double ReadingDeviation = 0.012;
    private const double VoltsDeviation = 0.005;

    private readonly TrialBoard _board;

    // By draw, then by fault (the last is all well): chance of each look of each lamp, and amperes and volts.
    private readonly float[][][] _looks;
    private readonly double[][] _amps;
    private readonly double[][] _volts;

    internal TrialReference(TrialBoard board, double burdenOhms, Random chance)
    {
        _board = board;
        var all = Enumerable.Range(0, board.Faults.Length).ToList();
        var shown = Enumerable.Range(0, Draws).Select(_ => TrialDraw.Of(board.Pack, chance)).ToList().ConvertAll(d => board.Show(d, all, burdenOhms));
        _looks = [.. shown.Select(s => s.Light.Append(s.SoundLight).Select(Chances).ToArray())];
        _volts = [.. shown.Select(s => s.Volts.Append(s.SoundVolts).ToArray())];
        _amps = [.. shown.Select(s => s.Amps.Append(s.SoundAmps).ToArray())];
    }

    /// <summary>Weight of each class, pairs of classes and all well as the trial names them.</summary>
    internal Dictionary<(int, int), double> Classes(LampLook[] seen, double? amps, double? volts, bool meter)
    {
        var (faults, classes) = (_board.Faults.Length, _board.Classes[meter]);
        var before = TrialCase.Before(_board);
        var result = new Dictionary<(int, int), double>();
        void Add((int, int) key, double weight) => result[key] = result.GetValueOrDefault(key) + weight;
        var looks = _looks.Select(d => d.Select(f => Product(f, seen)).ToArray()).ToArray();
        double Read(double expectedAmps, double expectedVolts) => amps is { } a && volts is { } v ? Density(a, expectedAmps, ReadingDeviation, TrialCase.Digit) * Density(v, expectedVolts, VoltsDeviation, 0) : 1;
        for (var f = 0; f < faults; f++)
        {
            Add(TrialCase.Key(classes[f]), (1 - TrialCase.HealthyShare - TrialCase.TwoShare) * before[f] * Enumerable.Range(0, Draws).Average(d => looks[d][f] * Read(_amps[d][f], _volts[d][f])));
        }

        Add((-1, -1), TrialCase.HealthyShare * Enumerable.Range(0, Draws).Average(d => looks[d][faults] * Read(_amps[d][faults], _volts[d][faults])));
        var likely = Enumerable.Range(0, faults).OrderByDescending(f => before[f] * Gain(f, seen)).Take(30).ToArray();
        foreach (var (a, i) in likely.Select((a, i) => (a, i)))
        {
            foreach (var b in likely.Skip(i + 1).Where(b => _board.Faults[a].Place != _board.Faults[b].Place))
            {
                var mean = Enumerable.Range(0, Draws).Average(d =>
                {
                    var p = 1.0;
                    for (var l = 0; l < seen.Length; l++)
                    {
                        // The darker of the two speaks.
                        var (x, y) = (_looks[d][a], _looks[d][b]);
                        p *= x[l * Looks] < y[l * Looks] ? x[(l * Looks) + (int)seen[l]] : y[(l * Looks) + (int)seen[l]];
                    }

                    return p * Read(Math.Max(0, _amps[d][a] + _amps[d][b] - _amps[d][faults]), Math.Max(0, _volts[d][a] + _volts[d][b] - _volts[d][faults]));
                });
                Add(TrialCase.Key(classes[a], classes[b]), TrialCase.TwoShare * 2 * before[a] * before[b] * mean);
            }
        }

        return result;
    }

    // How much better the lamps agree with this fault than with all well, in the first draw.
    private double Gain(int fault, LampLook[] seen)
    {
        var (x, sound, gain) = (_looks[0][fault], _looks[0][^1], 1.0);
        for (var l = 0; l < seen.Length; l++)
        {
            gain *= Math.Abs(x[l * Looks] - sound[l * Looks]) > 0.05 ? x[(l * Looks) + (int)seen[l]] / sound[(l * Looks) + (int)seen[l]] : 1;
        }

        return gain;
    }

    private static double Product(float[] chances, LampLook[] seen)
    {
        var p = 1.0;
        for (var l = 0; l < seen.Length; l++)
        {
            p *= chances[(l * Looks) + (int)seen[l]];
        }

        return p;
    }

    private static double Density(double read, double expected, double share, double digit)
    {
        var deviation = (share * Math.Max(Math.Abs(expected), Math.Abs(read))) + digit + 1e-9;
        var z = (read - expected) / deviation;
        return Math.Exp(-0.5 * z * z) / deviation;
    }

    private static float[] Chances(double[] light)
    {
        var chances = new float[light.Length * Looks];
        for (var l = 0; l < light.Length; l++)
        {
            var dim = TrialCase.Edge(light[l], BankView.DimShare);
            var dark = TrialCase.Edge(light[l], BankView.DarkShare);
            double[] right = [1 - dim, dim - dark, dark];
            for (var k = 0; k < Looks; k++)
            {
                chances[(l * Looks) + k] = (float)(((1 - TrialCase.MisreadShare) * right[k]) + (TrialCase.MisreadShare / 2 * (1 - right[k])));
            }
        }

        return chances;
    }
}
