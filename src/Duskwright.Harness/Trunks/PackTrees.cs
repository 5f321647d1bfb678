using System.Collections.Immutable;
using Google.OrTools.Sat;

namespace Duskwright.Harness.Trunks;

/// <summary>Trunks with taps for several packs: the capacitated spanning tree. Local search finds groups, a solver puts the best of them together, cuts bound it from below.</summary>
/// <remarks>The savings rule to start from: L. R. Esau and K. C. Williams, On teleprocessing system design II, IBM Systems Journal 5 (1966) 142-147.</remarks>
public static class PackTrees
{
    // Groups the solver is offered at most, the shortest for what they join first.
    private const int MostGroups = 12_000;

    /// <summary>Finds short trees.</summary>
    /// <param name="problem">Bank, buildings and lengths.</param>
    /// <param name="settings">How long the search goes.</param>
    /// <param name="cancel">Stops the search; the best so far is given.</param>
    /// <returns>The trees and the bound.</returns>
    /// <exception cref="ArgumentException">One building alone takes more than a pack may give.</exception>
    public static PackTreeAnswer Solve(PackTreeProblem problem, PackTreeSettings settings, CancellationToken cancel = default)
    {
        if (problem.Load.Any(l => l > problem.Capacity))
        {
            throw new ArgumentException("Each load must be within the capacity of a pack.", nameof(problem));
        }

        if (problem.Load.Length < 3)
        {
            var alone = problem.Load.Length < 2 ? 0 : problem.Metres[0][1];
            return new PackTreeAnswer(problem.Load.Length < 2 ? [] : [(0, 1)], alone, alone);
        }

        var start = Savings.Groups(problem);
        var seen = new Dictionary<string, (int[] Members, double Metres)>();
        var best = start;
        for (var turn = 0; turn < settings.Starts && !cancel.IsCancellationRequested; turn++)
        {
            var annealing = new TreeAnnealing(problem, settings.Seed + turn);
            annealing.Run(turn % 2 == 0 ? start : best, settings.Moves / settings.Starts, cancel);
            foreach (var (key, group) in annealing.Seen)
            {
                _ = seen.TryAdd(key, group);
            }

            best = Together(problem, [.. seen.Values], settings, cancel) ?? best;
        }

        var metres = problem.Metres.Select(r => r.ToArray()).ToArray();
        var tree = new GroupTree(metres);
        var pieces = ImmutableArray.CreateBuilder<(int, int)>();
        var length = 0.0;
        foreach (var group in best)
        {
            var parents = new int[group.Length];
            length += tree.Metres(group, parents);
            pieces.AddRange(group.Select((i, k) => (parents[k], i)));
        }

        return new PackTreeAnswer(pieces.ToImmutable(), length, Math.Min(length, TreeBound.Of(problem, length, settings.BoundRounds, cancel)));
    }

    // The shortest choice of the groups seen that holds each building once.
    private static List<int[]>? Together(PackTreeProblem problem, List<(int[] Members, double Metres)> seen, PackTreeSettings settings, CancellationToken cancel)
    {
        var offered = seen.OrderBy(g => g.Metres / g.Members.Length).Take(MostGroups).ToList();
        var model = new CpModel();
        var used = offered.Select((_, i) => model.NewBoolVar($"{i}")).ToArray();
        var on = problem.Load.Select(_ => new List<BoolVar>()).ToArray();
        for (var g = 0; g < used.Length; g++)
        {
            Array.ForEach(offered[g].Members, i => on[i].Add(used[g]));
        }

        foreach (var holding in on.Skip(1))
        {
            if (holding.Count == 0)
            {
                return null;
            }

            model.AddExactlyOne(holding);
        }

        // Whole thousandths of the mean piece are fine enough to choose by.
        var grain = seen.Average(g => g.Metres / g.Members.Length) / 10_000;
        model.Minimize(LinearExpr.WeightedSum(used, offered.Select(g => (long)Math.Round(g.Metres / grain))));
        var solver = new CpSolver
        {
            StringParameters = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"num_search_workers:1 random_seed:7 linearization_level:2 max_deterministic_time:{settings.DeterministicSeconds}"),
        };
        using var stop = cancel.Register(solver.StopSearch);
        return solver.Solve(model) is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? [.. offered.Where((_, g) => solver.BooleanValue(used[g])).Select(g => (int[])g.Members.Clone())]
            : null;
    }
}
