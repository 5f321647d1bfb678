namespace Duskwright.Harness.Sharing;

/// <summary>Puts neighbours on one pack without taking another pack: loads move to or change places with those of other packs as long as that draws districts together.</summary>
/// <remarks>
/// What counts is the sum over packs of the squared distances from the district's middle, which shared wire follows; a hundredth part weighs how evenly packs are filled, so that it decides
/// only where districts do not. Sums are kept, so that a move is weighed in a few steps (the exchange of J. A. Hartigan, Clustering Algorithms, 1975, chapter 4). Repeats exactly.
/// </remarks>
internal sealed class Districts
{
    private const double EvennessWeight = 0.01;
    private const int MostPasses = 60;

    private readonly SharingProblem _problem;
    private readonly int[] _packOf;
    private readonly List<int> _used;
    private readonly double _spread;
    private readonly int[] _count;
    private readonly double[] _x;
    private readonly double[] _y;
    private readonly double[] _squares;
    private readonly long[] _load;

    private Districts(SharingProblem problem, int[] packOf)
    {
        (_problem, _packOf) = (problem, [.. packOf]);
        var packs = problem.Packs.Length;
        (_count, _x, _y, _squares, _load) = (new int[packs], new double[packs], new double[packs], new double[packs], new long[packs]);
        for (var l = 0; l < packOf.Length; l++)
        {
            Put(l, packOf[l], 1);
        }

        _used = [.. packOf.Distinct().Order()];
        var (meanX, meanY) = (problem.Loads.Average(l => l.X), problem.Loads.Average(l => l.Y));
        _spread = Math.Max(1e-9, problem.Loads.Sum(l => Math.Pow(l.X - meanX, 2) + Math.Pow(l.Y - meanY, 2)));
    }

    /// <summary>Draws the districts of a sharing together; nothing pinned moves and no pack is overloaded.</summary>
    internal static int[] Draw(SharingProblem problem, int[] packOf, Action<int[]> closer, CancellationToken cancel)
    {
        closer(packOf);
        var best = Improved(problem, packOf, cancel);
        closer(best.PackOf);
        foreach (var start in DistrictStarts.Of(problem, packOf))
        {
            if (Improved(problem, start, cancel) is var other && other.Cost < best.Cost - 1e-12)
            {
                best = other;
                closer(best.PackOf);
            }
        }

        return best.PackOf;
    }

    private static (int[] PackOf, double Cost) Improved(SharingProblem problem, int[] packOf, CancellationToken cancel)
    {
        var districts = new Districts(problem, packOf);
        for (var pass = 0; pass < MostPasses && !cancel.IsCancellationRequested && districts.Pass(); pass++)
        {
        }

        return (districts._packOf, districts._used.Sum(districts.Cost));
    }

    private bool Pass()
    {
        var better = false;
        foreach (var a in _used)
        {
            foreach (var b in _used)
            {
                better |= a < b && ChangeAll(a, b);
            }
        }

        for (var l = 0; l < _packOf.Length; l++)
        {
            if (_problem.Loads[l].PinnedPack is not null)
            {
                continue;
            }

            better |= _used.Exists(p => Moves(l, p));
            for (var other = l + 1; other < _packOf.Length; other++)
            {
                better |= _problem.Loads[other].PinnedPack is null && ChangesPlace(l, other);
            }
        }

        return better;
    }

    // All that is not pinned, at once: single changes would first pull both districts apart.
    private bool ChangeAll(int a, int b)
    {
        var moving = Enumerable.Range(0, _packOf.Length).Where(l => (_packOf[l] == a || _packOf[l] == b) && _problem.Loads[l].PinnedPack is null).ToList();
        var before = Cost(a) + Cost(b);
        moving.ForEach(Flip);
        if (_load[a] <= _problem.Packs[a].CapacityMicroamperes && _load[b] <= _problem.Packs[b].CapacityMicroamperes && _count[a] > 0 && _count[b] > 0 && Cost(a) + Cost(b) < before - 1e-9)
        {
            return true;
        }

        moving.ForEach(Flip);
        return false;

        void Flip(int l)
        {
            var to = _packOf[l] == a ? b : a;
            Put(l, _packOf[l], -1);
            Put(l, to, 1);
            _packOf[l] = to;
        }
    }

    // A pack may not be emptied by this: it might be a begun one.
    private bool Moves(int l, int to)
    {
        var from = _packOf[l];
        if (to == from || _count[from] == 1 || _load[to] + _problem.Loads[l].Microamperes > _problem.Packs[to].CapacityMicroamperes)
        {
            return false;
        }

        var before = Cost(from) + Cost(to);
        Put(l, from, -1);
        Put(l, to, 1);
        if (Cost(from) + Cost(to) < before - 1e-9)
        {
            _packOf[l] = to;
            return true;
        }

        Put(l, to, -1);
        Put(l, from, 1);
        return false;
    }

    private bool ChangesPlace(int l, int other)
    {
        var (a, b) = (_packOf[l], _packOf[other]);
        long more = _problem.Loads[other].Microamperes - _problem.Loads[l].Microamperes;
        if (a == b || _load[a] + more > _problem.Packs[a].CapacityMicroamperes || _load[b] - more > _problem.Packs[b].CapacityMicroamperes)
        {
            return false;
        }

        var before = Cost(a) + Cost(b);
        Change(1);
        if (Cost(a) + Cost(b) < before - 1e-9)
        {
            (_packOf[l], _packOf[other]) = (b, a);
            return true;
        }

        Change(-1);
        return false;

        void Change(int sign)
        {
            Put(l, a, -sign);
            Put(other, b, -sign);
            Put(l, b, sign);
            Put(other, a, sign);
        }
    }

    private void Put(int l, int pack, int sign)
    {
        var load = _problem.Loads[l];
        _count[pack] += sign;
        _x[pack] += sign * load.X;
        _y[pack] += sign * load.Y;
        _squares[pack] += sign * ((load.X * load.X) + (load.Y * load.Y));
        _load[pack] += sign * load.Microamperes;
    }

    // Σ|p − middle|² = Σ|p|² − |Σp|²/n; and how full the pack is, squared.
    private double Cost(int pack)
    {
        if (_count[pack] == 0)
        {
            return 0;
        }

        var full = _load[pack] / (double)_problem.Packs[pack].CapacityMicroamperes;
        return ((_squares[pack] - (((_x[pack] * _x[pack]) + (_y[pack] * _y[pack])) / _count[pack])) / _spread) + (EvennessWeight * full * full / _used.Count);
    }
}
