namespace Duskwright.Benchmarks.Faults;

/// <summary>How good probabilities of classes were, case by case.</summary>
internal sealed class TrialScore
{
    private const double LeastProbability = 1e-6;
    private const int Bins = 10;

    private readonly List<(string What, double Log, int Place, double Top, bool Hit)> _cases = [];

    /// <summary>Mean natural logarithm of what was given to the truth.</summary>
    internal double LogScore => _cases.Average(c => c.Log);

    internal double First => _cases.Average(c => c.Place == 0 ? 1.0 : 0);

    internal double FirstThree => _cases.Average(c => c.Place < 3 ? 1.0 : 0);

    /// <summary>Mean distance between how sure the first place was and how often it was right, over ten bins.</summary>
    internal double CalibrationError => _cases.GroupBy(c => Math.Min(Bins - 1, (int)(c.Top * Bins)))
        .Sum(g => Math.Abs(g.Average(c => c.Top) - g.Average(c => c.Hit ? 1.0 : 0)) * g.Count() / _cases.Count);

    /// <summary>By what was wrong: how many cases, how many in first place and among the first three, and the mean logarithm.</summary>
    internal IEnumerable<(string What, int Cases, int First, int FirstThree, double Log)> ByFault =>
        _cases.GroupBy(c => c.What, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => (g.Key, g.Count(), g.Count(c => c.Place == 0), g.Count(c => c.Place < 3), g.Average(c => c.Log)));

    internal void Note(string what, Dictionary<(int, int), double> weights, (int, int) truth)
    {
        var all = weights.Values.Sum();
        var ordered = weights.OrderByDescending(w => w.Value).ToList();
        var place = ordered.FindIndex(w => w.Key == truth);
        _cases.Add((
            what,
            Math.Log(Math.Max(LeastProbability, weights.GetValueOrDefault(truth) / all)),
            place < 0 ? int.MaxValue : place,
            ordered[0].Value / all,
            place == 0));
    }
}
