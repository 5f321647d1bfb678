using System.Collections.Immutable;
using Google.OrTools.LinearSolver;
using Google.OrTools.Sat;

namespace Duskwright.Harness.Sharing;

/// <summary>The fillings known so far: the linear programme that prices loads, and the choice of fillings in whole numbers.</summary>
/// <remarks>P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock problem, Operations Research 9 (1961) 849-859.</remarks>
internal sealed class ColumnMaster : IDisposable
{
    private readonly ImmutableArray<PackKind> _kinds;
    private readonly ImmutableArray<LoadClass> _classes;
    private readonly Solver _solver = Solver.CreateSolver("GLOP");
    private readonly Google.OrTools.LinearSolver.Constraint[] _hung;
    private readonly Google.OrTools.LinearSolver.Constraint[] _onHand;
    private readonly HashSet<string> _known = [];

    internal ColumnMaster(ImmutableArray<PackKind> kinds, ImmutableArray<LoadClass> classes)
    {
        (_kinds, _classes) = (kinds, classes);
        _hung = [.. classes.Select(c => _solver.MakeConstraint(c.Loads.Length, c.Loads.Length))];
        _onHand = [.. kinds.Select(k => _solver.MakeConstraint(double.NegativeInfinity, k.OnHand))];
        _solver.Objective().SetMinimization();

        // A load that hangs nowhere costs more than any pack with any load on it.
        var dear = 10.0 * (1 + kinds.Max(k => Math.Abs(k.Cost)) + classes.Max(c => c.Cost.Max(Math.Abs)));
        foreach (var row in _hung)
        {
            var missing = _solver.MakeNumVar(0, double.PositiveInfinity, "");
            row.SetCoefficient(missing, 1);
            _solver.Objective().SetCoefficient(missing, dear);
        }
    }

    internal List<Filling> Fillings { get; } = [];

    internal bool Add(Filling filling)
    {
        if (!_known.Add(filling.Key))
        {
            return false;
        }

        Fillings.Add(filling);
        var used = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        for (var i = 0; i < filling.Counts.Length; i++)
        {
            if (filling.Counts[i] > 0)
            {
                _hung[i].SetCoefficient(used, filling.Counts[i]);
            }
        }

        _onHand[filling.Kind].SetCoefficient(used, 1);
        _solver.Objective().SetCoefficient(used, filling.Cost);
        return true;
    }

    /// <summary>The worth of a load of each class and of a pack of each kind, by the linear optimum over the known fillings; none where the solver found no optimum.</summary>
    internal (double[] Worth, double[] PackWorth)? Price()
    {
        // A solver that goes on from its last answer now and then loses its footing and finds it again from nothing.
        if (_solver.Solve() != Solver.ResultStatus.OPTIMAL)
        {
            _solver.Reset();
            if (_solver.Solve() != Solver.ResultStatus.OPTIMAL)
            {
                return null;
            }
        }

        return ([.. _hung.Select(r => r.DualValue())], [.. _onHand.Select(r => Math.Min(0, r.DualValue()))]);
    }

    /// <summary>The cheapest choice of these fillings that hangs every load once and costs neither less than the bound nor as much as the best known.</summary>
    /// <returns>The choice, none where none was found; and whether the search went to its end.</returns>
    internal static (ImmutableArray<Filling>? Fillings, bool Searched) Choose(
        IReadOnlyList<Filling> fillings, ImmutableArray<PackKind> kinds, ImmutableArray<LoadClass> classes,
        long atLeast, long below, ColumnSettings settings, CancellationToken cancel)
    {
        var model = new CpModel();
        var used = fillings.Select((f, i) => model.NewIntVar(0, f.Counts.Select((n, c) => n == 0 ? int.MaxValue : classes[c].Loads.Length / n).Append(kinds[f.Kind].OnHand).Min(), $"{i}")).ToArray();
        for (var c = 0; c < classes.Length; c++)
        {
            var on = Enumerable.Range(0, used.Length).Where(i => fillings[i].Counts[c] > 0).ToList();
            model.Add(Google.OrTools.Sat.LinearExpr.WeightedSum(on.Select(i => used[i]), on.Select(i => (long)fillings[i].Counts[c])) == classes[c].Loads.Length);
        }

        for (var k = 0; k < kinds.Length; k++)
        {
            model.Add(Google.OrTools.Sat.LinearExpr.Sum(used.Where((_, i) => fillings[i].Kind == k)) <= kinds[k].OnHand);
        }

        var cost = Google.OrTools.Sat.LinearExpr.WeightedSum(used, fillings.Select(f => f.Cost));
        model.AddLinearConstraint(cost, atLeast, below - 1);
        model.Minimize(cost);
        var solver = new CpSolver
        {
            StringParameters = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"num_search_workers:1 random_seed:7 linearization_level:2 max_deterministic_time:{settings.DeterministicSeconds}"),
        };
        using var stop = cancel.Register(solver.StopSearch);
        var status = solver.Solve(model);
        return (
            status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
                ? [.. fillings.SelectMany((f, i) => Enumerable.Repeat(f, (int)solver.Value(used[i])))]
                : null,
            status is CpSolverStatus.Optimal or CpSolverStatus.Infeasible);
    }

    public void Dispose() => _solver.Dispose();
}
