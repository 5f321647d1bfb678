using System.Collections.Immutable;
using Google.OrTools.Sat;

namespace Duskwright.Harness.Sharing;

/// <summary>Shares loads over packs: fewest packs first, with a proof where the limit allows it, then neighbours together.</summary>
/// <remarks>The fewest packs by columns (<see cref="ColumnSharing"/>), then districts drawn together by exchange. Where columns find none, the CP-SAT solver with one worker, a fixed seed and a deterministic limit decides. Repeats exactly.</remarks>
public static class SharingSolver
{
    /// <summary>Shares the loads.</summary>
    /// <param name="problem">Loads and packs.</param>
    /// <param name="settings">Seed and deterministic limit.</param>
    /// <param name="cancel">Stops the search; the best answer so far is given.</param>
    /// <returns>The answer, or why there is none.</returns>
    public static SharingAnswer Solve(SharingProblem problem, SharingSettings settings, CancellationToken cancel = default) => Solve(problem, settings, null, cancel);

    /// <summary>Shares the loads and tells better answers as they come.</summary>
    /// <param name="problem">Loads and packs.</param>
    /// <param name="settings">Seed and deterministic limit.</param>
    /// <param name="better">Hears each better answer: one filled at once, one of the fewest packs, and then those whose districts lie closer together.</param>
    /// <param name="cancel">Stops the search; the best answer so far is given.</param>
    /// <returns>The answer, or why there is none.</returns>
    public static SharingAnswer Solve(SharingProblem problem, SharingSettings settings, IProgress<SharingAnswer>? better, CancellationToken cancel)
    {
        var (loads, packs) = (problem.Loads, problem.Packs);
        if (loads.FirstOrDefault(l => packs.All(p => p.CapacityMicroamperes < l.Microamperes)) is { } tooLarge)
        {
            return SharingAnswer.None($"{tooLarge.Id} takes {tooLarge.Microamperes / 1000.0:0.#} mA, more than any pack may give");
        }

        if (Enumerable.Range(0, packs.Length).FirstOrDefault(p => loads.Where(l => l.PinnedPack == p).Sum(l => (long)l.Microamperes) > packs[p].CapacityMicroamperes, -1) is >= 0 and var over)
        {
            return SharingAnswer.None($"Pack {packs[over].Id} may give {packs[over].CapacityMicroamperes / 1000.0:0.#} mA, and what is to stay on it takes {loads.Where(l => l.PinnedPack == over).Sum(l => (long)l.Microamperes) / 1000.0:0.#} mA");
        }

        if (loads.IsEmpty)
        {
            return new SharingAnswer([], 0, 0, true, null);
        }

        if (better is not null && FilledAtOnce.Share(problem) is { } first)
        {
            better.Report(new SharingAnswer([.. first], first.Distinct().Count(), 1, false, null));
        }

        if (FewestPacks.Share(problem, cancel) is { } columns)
        {
            var used = columns.PackOf.Distinct().Count();
            return Answer(Districts.Draw(problem, columns.PackOf, closer => better?.Report(Answer(closer)), cancel));

            SharingAnswer Answer(int[] packOf) => new([.. packOf], used, columns.AtLeast, used == columns.AtLeast, null);
        }

        // Columns that are rounded up found none: the loads themselves may still fit, or it is proved that they do not.
        var whole = Model(problem, out var on, out var inUse);
        whole.Minimize(LinearExpr.Sum(inUse));
        var (solver, status) = Run(whole, settings, cancel);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            return SharingAnswer.None(status == CpSolverStatus.Infeasible
                ? $"The loads take {loads.Sum(l => (long)l.Microamperes) / 1000.0:0} mA and cannot be shared over {packs.Length} packs of {packs.Sum(p => (long)p.CapacityMicroamperes) / 1000.0:0} mA in all"
                : "No sharing was found within the limit");
        }

        var packOf = Districts.Draw(problem, [.. PackOf(solver, on)], _ => { }, cancel);
        return new SharingAnswer([.. packOf], inUse.Count(u => solver.BooleanValue(u)), (int)Math.Ceiling(solver.BestObjectiveBound - 1e-6), status == CpSolverStatus.Optimal, null);
    }

    private static CpModel Model(SharingProblem problem, out BoolVar[][] on, out BoolVar[] used)
    {
        var (loads, packs) = (problem.Loads, problem.Packs);
        var model = new CpModel();
        var onPack = loads.Select((_, l) => packs.Select((_, p) => model.NewBoolVar($"{l} on {p}")).ToArray()).ToArray();
        var packUsed = packs.Select((_, p) => model.NewBoolVar($"used {p}")).ToArray();
        for (var l = 0; l < loads.Length; l++)
        {
            model.AddExactlyOne(onPack[l]);
            if (loads[l].PinnedPack is { } pinned)
            {
                model.Add(onPack[l][pinned] == 1);
            }
        }

        for (var p = 0; p < packs.Length; p++)
        {
            model.Add(LinearExpr.WeightedSum(onPack.Select(row => row[p]), loads.Select(load => (long)load.Microamperes)) <= packUsed[p] * packs[p].CapacityMicroamperes);

            // Equal packs without anything pinned are interchangeable: use them in order.
            if (p > 0 && packs[p].CapacityMicroamperes == packs[p - 1].CapacityMicroamperes && loads.All(l => l.PinnedPack is null))
            {
                model.AddImplication(packUsed[p], packUsed[p - 1]);
            }
        }

        (on, used) = (onPack, packUsed);
        return model;
    }

    private static (CpSolver Solver, CpSolverStatus Status) Run(CpModel model, SharingSettings settings, CancellationToken cancel)
    {
        var solver = new CpSolver
        {
            StringParameters = string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"num_search_workers:1 random_seed:{settings.Seed} max_deterministic_time:{settings.DeterministicSeconds}"),
        };
        using var stop = cancel.Register(solver.StopSearch);
        return (solver, solver.Solve(model));
    }

    private static ImmutableArray<int> PackOf(CpSolver solver, BoolVar[][] on) =>
        [.. on.Select(row => Array.FindIndex(row, solver.BooleanValue))];
}

/// <summary>What is to be shared.</summary>
/// <param name="Loads">The loads.</param>
/// <param name="Packs">The packs there may be.</param>
public sealed record SharingProblem(ImmutableArray<SharedLoad> Loads, ImmutableArray<PackSlot> Packs);

/// <summary>Something that hangs on one pack as a whole.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Microamperes">Its current, µA.</param>
/// <param name="X">Where it lies, m.</param>
/// <param name="Y">Where it lies, m.</param>
/// <param name="PinnedPack">Index of the pack it must stay on; none where it is free.</param>
public sealed record SharedLoad(string Id, int Microamperes, double X, double Y, int? PinnedPack = null);

/// <summary>A pack there may be.</summary>
/// <param name="Id">Its name.</param>
/// <param name="CapacityMicroamperes">The most it may give, µA.</param>
public sealed record PackSlot(string Id, int CapacityMicroamperes);

/// <summary>How the search is limited, never by the clock.</summary>
/// <param name="Seed">Seed of the solver.</param>
/// <param name="DeterministicSeconds">Its deterministic limit.</param>
public sealed record SharingSettings(int Seed = 7, double DeterministicSeconds = 2);

/// <summary>A sharing.</summary>
/// <param name="PackOf">Index of the pack of each load.</param>
/// <param name="PacksUsed">How many packs it takes.</param>
/// <param name="PacksLowerBound">How many it takes at the very least.</param>
/// <param name="Proven">Whether no sharing takes fewer packs.</param>
/// <param name="Infeasible">Why there is none; none where there is one.</param>
public sealed record SharingAnswer(ImmutableArray<int> PackOf, int PacksUsed, int PacksLowerBound, bool Proven, string? Infeasible)
{
    internal static SharingAnswer None(string reason) => new([], 0, 0, false, reason);
}
