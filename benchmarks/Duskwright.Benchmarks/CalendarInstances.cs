using System.Collections.Immutable;
using System.Globalization;
using Duskwright.Calendar.Jobs;

namespace Duskwright.Benchmarks;

/// <summary>Reads published scheduling problems into work; the formats are described in the README beside the instances.</summary>
internal static class CalendarInstances
{
    /// <summary>Every instance with its published finish; none where it is published as having no schedule.</summary>
    internal static IEnumerable<(string Name, BuildWork Work, int? Published)> All(string folder) =>
        Rows(Path.Combine(folder, "one-machine")).Select(r => (r[0].Replace("-jobs.csv", "", StringComparison.Ordinal), OneMachine(folder, r[0], r[1]), (int?)Number(r[3])))
            .Concat(Rows(Path.Combine(folder, "rcpsp-max")).Select(r => (r[0], Lagged(Tokens(folder, "rcpsp-max", r[0])), r[3] == "unsat" ? (int?)null : Number(r[3]))))
            .Concat(Rows(Path.Combine(folder, "rcpsp-psplib")).Select(r => (r[0], Sections(File.ReadAllLines(Path.Combine(folder, "rcpsp-psplib", r[0]))), (int?)Number(r[3]))))
            .Concat(Rows(Path.Combine(folder, "rcpsp-patterson")).Select(r => (r[0], Successors(Tokens(folder, "rcpsp-patterson", r[0])), (int?)Number(r[3]))));

    private static IEnumerable<string[]> Rows(string folder) => Csv(Path.Combine(folder, "best-known.csv"));

    private static IEnumerable<string[]> Csv(string file) =>
        File.ReadLines(file).Where(l => l.Length > 0 && l[0] != '#').Skip(1).Select(l => l.Split(','));

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    private static Queue<string> Tokens(string folder, string set, string file) =>
        new(File.ReadAllText(Path.Combine(folder, set, file)).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    // p = hands-on time, q = drying after it, r = not before; a lag runs from start to start.
    private static BuildWork OneMachine(string folder, string jobs, string lags) => new(
        [.. Csv(Path.Combine(folder, "one-machine", jobs)).Select(r => new Job(r[0], Number(r[2])) { NotBefore = Number(r[1]), DryingMinutes = Number(r[3]), Uses = [new Use("hands")] })],
        lags.Length == 0 ? [] : [.. Csv(Path.Combine(folder, "one-machine", lags)).Select(r => new Lag(r[0], r[1], Number(r[2]), Measured: LagStart.Start))],
        [new Resource("hands", 1)]);

    private static BuildWork Lagged(Queue<string> tokens)
    {
        int Take() => Number(tokens.Dequeue().Trim('[', ']'));
        var (count, resources) = (Take() + 2, Take());
        _ = (Take(), Take());
        var lags = new List<Lag>();
        for (var a = 0; a < count; a++)
        {
            var from = Take();
            _ = Take();
            var heads = Enumerable.Range(0, Take()).ToList().ConvertAll(_ => Take());
            foreach (var to in heads)
            {
                var lag = Take();
                lags.Add(lag < 0 ? new Lag($"{to}", $"{from}", null, -lag, LagStart.Start) : new Lag($"{from}", $"{to}", lag, Measured: LagStart.Start));
            }
        }

        var jobs = new List<Job>();
        for (var a = 0; a < count; a++)
        {
            var id = Take();
            _ = Take();
            var minutes = Take();
            jobs.Add(new Job($"{id}", minutes) { Uses = Asked(resources, Take) });
        }

        return new BuildWork([.. jobs], [.. lags], Capacities(resources, Take));
    }

    private static BuildWork Successors(Queue<string> tokens)
    {
        int Take() => Number(tokens.Dequeue());
        var (count, resources) = (Take(), Take());
        var capacities = Capacities(resources, Take);
        var (jobs, lags) = (new List<Job>(), new List<Lag>());
        for (var j = 1; j <= count; j++)
        {
            var minutes = Take();
            jobs.Add(new Job($"{j}", minutes) { Uses = Asked(resources, Take) });
            lags.AddRange(Enumerable.Range(0, Take()).ToList().ConvertAll(_ => new Lag($"{j}", $"{Take()}")));
        }

        return new BuildWork([.. jobs], [.. lags], capacities);
    }

    private static BuildWork Sections(string[] lines)
    {
        int[][] Numbers(string heading, int skip) => [.. lines.SkipWhile(l => !l.StartsWith(heading, StringComparison.Ordinal)).Skip(skip)
            .TakeWhile(l => !l.StartsWith('*')).Select(l => l.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(Number).ToArray())];
        var capacities = Numbers("RESOURCEAVAILABILITIES", 2)[0];
        var jobs = Numbers("REQUESTS/DURATIONS", 3).Select(r =>
        {
            var next = 3;
            return new Job($"{r[0]}", r[2]) { Uses = Asked(capacities.Length, () => r[next++]) };
        });
        var lags = Numbers("PRECEDENCE RELATIONS", 2).SelectMany(r => r.Skip(3).Select(to => new Lag($"{r[0]}", $"{to}")));
        var at = 0;
        return new BuildWork([.. jobs], [.. lags], Capacities(capacities.Length, () => capacities[at++]));
    }

    private static ImmutableArray<Use> Asked(int resources, Func<int> take) =>
        [.. Enumerable.Range(0, resources).ToList().ConvertAll(r => new Use($"R{r}", take())).Where(u => u.Amount > 0)];

    private static ImmutableArray<Resource> Capacities(int resources, Func<int> take) =>
        [.. Enumerable.Range(0, resources).ToList().ConvertAll(r => new Resource($"R{r}", take()))];
}
