using Google.OrTools.LinearSolver;

namespace Duskwright.Harness.Trunks;

/// <summary>What trees of packs are at least as long as: a linear programme with a cut for sets of buildings that need so many packs.</summary>
/// <remarks>
/// A set S of buildings that draws d(S) hangs on at least ⌈d(S)/Q⌉ trees, so at most |S| − ⌈d(S)/Q⌉ pieces lie inside it (E. Uchoa and others, Robust branch-cut-and-price for the
/// capacitated minimum spanning tree problem, Mathematical Programming 112 (2008) 443-472). Pieces left out at first are priced at the end, so that the bound holds for all.
/// </remarks>
internal sealed class TreeBound
{
    private const int NearestTaken = 12;
    private readonly PackTreeProblem _problem;
    private readonly int _n;
    private readonly Solver _solver = Solver.CreateSolver("GLOP");
    private readonly Dictionary<(int, int), Variable> _pieces = [];
    private readonly List<(bool[] Set, Constraint Row)> _rows = [];
    private readonly Constraint _count;
    private readonly HashSet<string> _known = [];

    private TreeBound(PackTreeProblem problem)
    {
        (_problem, _n) = (problem, problem.Load.Length);
        _solver.Objective().SetMinimization();
        _count = _solver.MakeConstraint(_n - 1, _n - 1);
        for (var i = 1; i < _n; i++)
        {
            Add(0, i);
            foreach (var j in Enumerable.Range(1, _n - 1).Where(j => j != i).OrderBy(j => problem.Metres[i][j]).Take(NearestTaken))
            {
                Add(Math.Min(i, j), Math.Max(i, j));
            }
        }
    }

    internal static double Of(PackTreeProblem problem, double known, int rounds, CancellationToken cancel)
    {
        var bound = new TreeBound(problem);
        using (bound._solver)
        {
            return bound.Run(known, rounds, cancel);
        }
    }

    private double Run(double known, int rounds, CancellationToken cancel)
    {
        Cut(Enumerable.Range(0, _n).Select(i => i > 0).ToArray());
        var best = 0.0;
        for (var round = 0; round < rounds && !cancel.IsCancellationRequested; round++)
        {
            if (_solver.Solve() != Solver.ResultStatus.OPTIMAL)
            {
                break;
            }

            var (least, entered) = PriceLeftOut();
            best = Math.Max(best, _solver.Objective().Value() + ((_n - 1) * least));
            if (best >= known - 1e-9 || (!entered && !CutBroken()))
            {
                break;
            }
        }

        return best;
    }

    private void Add(int i, int j)
    {
        if (_pieces.ContainsKey((i, j)))
        {
            return;
        }

        var piece = _solver.MakeNumVar(0, 1, "");
        _pieces[(i, j)] = piece;
        _solver.Objective().SetCoefficient(piece, _problem.Metres[i][j]);
        _count.SetCoefficient(piece, 1);
        foreach (var (set, row) in _rows)
        {
            if (set[i] && set[j])
            {
                row.SetCoefficient(piece, 1);
            }
        }
    }

    // The least reduced cost of a piece left out: all pieces being n − 1 in number, each could lower the sum by no more than that.
    private (double Least, bool Entered) PriceLeftOut()
    {
        var within = new double[_n, _n];
        foreach (var (set, row) in _rows)
        {
            var dual = row.DualValue();
            if (dual > -1e-12)
            {
                continue;
            }

            var members = Enumerable.Range(0, _n).Where(i => set[i]).ToArray();
            for (var a = 0; a < members.Length; a++)
            {
                for (var b = a + 1; b < members.Length; b++)
                {
                    within[members[a], members[b]] += dual;
                }
            }
        }

        var least = 0.0;
        var entering = new List<(double Reduced, int I, int J)>();
        for (var i = 1; i < _n; i++)
        {
            for (var j = i + 1; j < _n; j++)
            {
                var reduced = _problem.Metres[i][j] - _count.DualValue() - within[i, j];
                if (reduced < -1e-9 && !_pieces.ContainsKey((i, j)))
                {
                    least = Math.Min(least, reduced);
                    entering.Add((reduced, i, j));
                }
            }
        }

        foreach (var (_, i, j) in entering.Order().Take(10 * _n))
        {
            Add(i, j);
        }

        return (least, entering.Count > 0);
    }

    // Sets are grown from each building by whatever hangs on them most strongly; every step is tested.
    private bool CutBroken()
    {
        var taken = new double[_n, _n];
        foreach (var ((i, j), piece) in _pieces)
        {
            taken[i, j] = taken[j, i] = piece.SolutionValue();
        }

        var found = new List<(double Broken, bool[] Set)>();
        for (var seed = 1; seed < _n; seed++)
        {
            var set = new bool[_n];
            var pull = new double[_n];
            var (size, load, inside, at) = (0, 0, 0.0, seed);
            (double Broken, bool[] Set)? worst = null;
            while (at > 0)
            {
                inside += pull[at];
                set[at] = true;
                (size, load) = (size + 1, load + _problem.Load[at]);
                var broken = inside - (size - ((load + _problem.Capacity - 1) / _problem.Capacity));
                if (broken > 0.01 && (worst is null || broken > worst.Value.Broken))
                {
                    worst = (broken, (bool[])set.Clone());
                }

                var next = 0;
                for (var j = 1; j < _n; j++)
                {
                    pull[j] += taken[at, j];
                    if (!set[j] && pull[j] > 1e-6 && (next == 0 || pull[j] > pull[next] + 1e-12))
                    {
                        next = j;
                    }
                }

                at = next;
            }

            if (worst is { } cut)
            {
                found.Add(cut);
            }
        }

        var added = false;
        foreach (var (_, set) in found.OrderByDescending(f => f.Broken))
        {
            added |= Cut(set);
        }

        return added;
    }

    private bool Cut(bool[] set)
    {
        var members = Enumerable.Range(0, _n).Where(i => set[i]).ToList();
        if (!_known.Add(string.Join(',', members)))
        {
            return false;
        }

        var load = members.Sum(i => _problem.Load[i]);
        var row = _solver.MakeConstraint(double.NegativeInfinity, members.Count - ((load + _problem.Capacity - 1) / _problem.Capacity));
        foreach (var ((i, j), piece) in _pieces)
        {
            if (set[i] && set[j])
            {
                row.SetCoefficient(piece, 1);
            }
        }

        _rows.Add((set, row));
        return true;
    }
}
