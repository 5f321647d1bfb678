using System.Collections.Immutable;
using Google.OrTools.LinearSolver;
using Google.OrTools.Sat;

namespace Duskwright.Harness.Trunks;

/// <summary>The directed cut formulation of a trunk: whatever set holds a terminal and not the first one is entered by an arc.</summary>
/// <remarks>
/// R. T. Wong (1984); T. Koch and A. Martin, Solving Steiner tree problems in graphs to optimality, Networks 32 (1998) 207-232.
/// Cuts start from the dual ascent and are added where a flow finds them broken, first in the linear programme, then in whole numbers.
/// </remarks>
internal sealed class TrunkCuts
{
    // Whole numbers of this many metres go to the solver; the bound gives away what the rounding could gain.
    private const double Grain = 1e-6;

    private readonly WireNet _net;
    private readonly ImmutableArray<int> _terminals;
    private readonly List<int[]> _cuts;
    private readonly bool[] _out;
    private readonly double[] _taken;

    internal TrunkCuts(WireNet net, ImmutableArray<int> terminals, List<int[]> cuts)
    {
        (_net, _terminals, _cuts) = (net, terminals, cuts);
        _out = new bool[2 * net.Pieces.Length];
        _taken = new double[2 * net.Pieces.Length];
    }

    /// <summary>The linear bound, and the arcs that a trunk no longer than the best could still use.</summary>
    internal double LinearBound(double best, int rounds, CancellationToken cancel)
    {
        using var solver = Solver.CreateSolver("GLOP");
        var arcs = Enumerable.Range(0, _out.Length).Select(a => solver.MakeNumVar(0, 1, "")).ToArray();
        var objective = solver.Objective();
        for (var a = 0; a < arcs.Length; a++)
        {
            objective.SetCoefficient(arcs[a], _net.Pieces[a / 2].Metres);
        }

        objective.SetMinimization();
        AddFlowBalance(solver, arcs);
        _cuts.ForEach(cut => AddCut(solver, arcs, cut));
        var bound = 0.0;
        for (var round = 0; round < rounds && !cancel.IsCancellationRequested; round++)
        {
            if (solver.Solve() != Solver.ResultStatus.OPTIMAL)
            {
                break;
            }

            bound = objective.Value();
            for (var a = 0; a < arcs.Length; a++)
            {
                _taken[a] = arcs[a].SolutionValue();
            }

            var broken = Broken(_taken);
            if (broken.Count == 0)
            {
                // An arc whose reduced cost lifts the bound above the best known is in no better trunk.
                for (var a = 0; a < arcs.Length; a++)
                {
                    _out[a] = bound + arcs[a].ReducedCost() > best + (1e-7 * Math.Max(1, best));
                }

                break;
            }

            foreach (var cut in broken)
            {
                _cuts.Add(cut);
                AddCut(solver, arcs, cut);
            }
        }

        return bound;
    }

    /// <summary>The best trunk grown where the linear programme would lay one: a piece it takes in full costs nothing.</summary>
    internal ImmutableArray<int> Guided(int starts) => TrunkGrowth.Best(
        _net, _terminals, starts, _net with { Pieces = [.. _net.Pieces.Select((p, i) => p with { Metres = p.Metres * Math.Max(1e-3, 1 - _taken[2 * i] - _taken[(2 * i) + 1]) })] });

    /// <summary>The shortest trunk in whole numbers, or none where the limit ends the search before every terminal is joined.</summary>
    internal (ImmutableArray<int> Pieces, double AtLeastMetres)? Whole(TrunkSettings settings, CancellationToken cancel)
    {
        var model = new CpModel();
        var arcs = _out.Select((isOut, a) => isOut ? null : model.NewBoolVar($"{a}")).ToArray();
        model.Minimize(Google.OrTools.Sat.LinearExpr.WeightedSum(
            arcs.Where(v => v is not null).Select(v => v!),
            Enumerable.Range(0, arcs.Length).Where(a => arcs[a] is not null).Select(a => (long)Math.Floor(_net.Pieces[a / 2].Metres / Grain))));
        var added = 0;
        for (var round = 0; round < settings.Rounds; round++)
        {
            for (; added < _cuts.Count; added++)
            {
                model.AddBoolOr(_cuts[added].Where(a => arcs[a] is not null).Select(a => arcs[a]!));
            }

            var solver = new CpSolver
            {
                StringParameters = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"num_search_workers:1 random_seed:7 max_deterministic_time:{settings.DeterministicSeconds}"),
            };
            using var stop = cancel.Register(solver.StopSearch);
            if (solver.Solve(model) != CpSolverStatus.Optimal)
            {
                return null;
            }

            var taken = arcs.Select(v => v is not null && solver.BooleanValue(v) ? 1.0 : 0).ToArray();
            var broken = Broken(taken);
            if (broken.Count == 0)
            {
                ImmutableArray<int> pieces = [.. Enumerable.Range(0, _net.Pieces.Length).Where(p => taken[2 * p] + taken[(2 * p) + 1] > 0.5)];
                return (pieces, solver.BestObjectiveBound * Grain);
            }

            _cuts.AddRange(broken);
        }

        return null;
    }

    // No junction but a terminal is left by more than enters it; an arc is never used both ways.
    private void AddFlowBalance(Solver solver, Variable[] arcs)
    {
        for (var j = 0; j < _net.Junctions; j++)
        {
            var isTerminal = _terminals.Contains(j);
            var entering = solver.MakeConstraint(j == _terminals[0] ? 0 : isTerminal ? 1 : 0, j == _terminals[0] ? 0 : 1);
            foreach (var (_, piece) in _net.Around[j])
            {
                entering.SetCoefficient(arcs[DualAscent.ArcInto(_net, piece, j)], 1);
            }

            if (!isTerminal)
            {
                foreach (var (_, piece) in _net.Around[j])
                {
                    var onward = solver.MakeConstraint(0, double.PositiveInfinity);
                    foreach (var (_, other) in _net.Around[j])
                    {
                        if (other != piece)
                        {
                            onward.SetCoefficient(arcs[DualAscent.ArcInto(_net, other, j)], 1);
                        }
                    }

                    onward.SetCoefficient(arcs[DualAscent.ArcInto(_net, piece, j) ^ 1], -1);
                }
            }
        }
    }

    private static void AddCut(Solver solver, Variable[] arcs, int[] cut)
    {
        var row = solver.MakeConstraint(1, double.PositiveInfinity);
        foreach (var arc in cut)
        {
            row.SetCoefficient(arcs[arc], 1);
        }
    }

    private List<int[]> Broken(double[] taken)
    {
        var flow = new ArcFlow(_net.Junctions, [.. taken.Select((x, a) => (DualAscent.Tail(_net, a), DualAscent.Head(_net, a), Math.Max(x, 0) + 1e-7))]);
        var broken = new List<int[]>();
        var seen = new HashSet<string>();
        foreach (var terminal in _terminals.Skip(1))
        {
            var (sent, side) = flow.Between(_terminals[0], terminal, 1);
            if (sent < 1 - 1e-4)
            {
                int[] cut = [.. Enumerable.Range(0, taken.Length).Where(a => side[DualAscent.Head(_net, a)] && !side[DualAscent.Tail(_net, a)])];
                if (seen.Add(string.Join(',', cut)))
                {
                    broken.Add(cut);
                }
            }
        }

        return broken;
    }
}
