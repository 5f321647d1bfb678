namespace Duskwright.Harness.Trunks;

/// <summary>Annealing over groups: a building, a branch or two buildings change packs; each group costs its shortest spanning tree with the bank.</summary>
/// <remarks>S. Kirkpatrick, C. Gelatt, M. Vecchi, Optimization by simulated annealing, Science 220 (1983) 671-680.</remarks>
internal sealed class TreeAnnealing
{
    private const int Neighbours = 12;
    private readonly double[][] _metres;
    private readonly int[] _load;
    private readonly int _capacity;
    private readonly int[][] _near;
    private readonly GroupTree _tree;
    private readonly Random _random;
    private readonly List<int[]> _groups = [];
    private readonly List<double> _cost = [];
    private readonly List<int> _sum = [];
    private readonly int[] _groupOf;
    private readonly int[] _parents;

    internal TreeAnnealing(PackTreeProblem problem, int seed)
    {
        _metres = [.. problem.Metres.Select(r => r.ToArray())];
        (_load, _capacity, _random) = ([.. problem.Load], problem.Capacity, new Random(seed));
        (_tree, _groupOf, _parents) = (new GroupTree(_metres), new int[_metres.Length], new int[_metres.Length]);
        _near = [.. _metres.Select((row, i) => Enumerable.Range(1, _metres.Length - 1).Where(j => j != i).OrderBy(j => row[j]).Take(Neighbours).ToArray())];
    }

    /// <summary>Every group that stood in a best solution so far.</summary>
    internal Dictionary<string, (int[] Members, double Metres)> Seen { get; } = [];

    internal double Run(IReadOnlyList<int[]> start, int moves, CancellationToken cancel)
    {
        Take(start);
        var now = _cost.Sum();
        var best = now;
        Remember();
        var mean = now / _metres.Length;
        var (hot, cold) = (0.3 * mean, 0.005 * mean);
        for (var move = 0; move < moves && (move % 4096 != 0 || !cancel.IsCancellationRequested); move++)
        {
            var heat = hot * Math.Pow(cold / hot, move / (double)moves);
            now += Try(heat);
            if (now < best - 1e-9)
            {
                best = now;
                Remember();
            }
            else if (move % 2000 == 0)
            {
                Remember();
            }
        }

        return best;
    }

    private void Take(IReadOnlyList<int[]> start)
    {
        _groups.Clear();
        _cost.Clear();
        _sum.Clear();
        foreach (var group in start)
        {
            Array.ForEach(group, i => _groupOf[i] = _groups.Count);
            _groups.Add([.. group]);
            _cost.Add(_tree.Metres(_groups[^1], []));
            _sum.Add(group.Sum(i => _load[i]));
        }
    }

    private double Try(double heat)
    {
        var i = 1 + _random.Next(_metres.Length - 1);
        var from = _groupOf[i];
        var kind = _random.Next(10);
        if (kind == 0)
        {
            return Change(from, Branch(i, from), -1, [], heat);
        }

        var j = _near[i][_random.Next(_near[i].Length)];
        var to = _groupOf[j];
        if (to == from)
        {
            return 0;
        }

        var moving = kind < 4 ? Branch(i, from) : [i];
        var back = kind >= 7 ? _random.Next(2) == 0 ? Branch(j, to) : [_groups[to][_random.Next(_groups[to].Length)]] : [];
        return Change(from, moving, to, back, heat);
    }

    // Moves some out of one group into another (or a new one), and some back, where the packs can carry that and the heat allows it.
    private double Change(int from, int[] moving, int to, int[] back, double heat)
    {
        var (out1, out2) = (moving.Sum(i => _load[i]), back.Sum(i => _load[i]));
        if ((to >= 0 && _sum[to] + out1 - out2 > _capacity) || _sum[from] - out1 + out2 > _capacity || (to < 0 && moving.Length == _groups[from].Length))
        {
            return 0;
        }

        int[] left = [.. _groups[from].Where(i => !moving.Contains(i)), .. back];
        int[] right = to < 0 ? moving : [.. _groups[to].Where(i => !back.Contains(i)), .. moving];
        var (leftCost, rightCost) = (_tree.Metres(left, []), _tree.Metres(right, []));
        var change = leftCost + rightCost - _cost[from] - (to < 0 ? 0 : _cost[to]);
        if (change > 0 && _random.NextDouble() >= Math.Exp(-change / heat))
        {
            return 0;
        }

        if (to < 0)
        {
            to = _groups.Count;
            _groups.Add([]);
            _cost.Add(0);
            _sum.Add(0);
        }

        Place(from, left, leftCost, _sum[from] - out1 + out2);
        Place(to, right, rightCost, _sum[to] + out1 - out2);
        if (left.Length == 0)
        {
            Drop(from);
        }

        return change;
    }

    private void Place(int group, int[] members, double metres, int sum)
    {
        (_groups[group], _cost[group], _sum[group]) = (members, metres, sum);
        foreach (var i in members)
        {
            _groupOf[i] = group;
        }
    }

    private void Drop(int group)
    {
        var last = _groups.Count - 1;
        if (group != last)
        {
            Place(group, _groups[last], _cost[last], _sum[last]);
        }

        _groups.RemoveAt(last);
        _cost.RemoveAt(last);
        _sum.RemoveAt(last);
    }

    // A building and everything that hangs on it.
    private int[] Branch(int root, int group)
    {
        var members = _groups[group];
        _tree.Metres(members, _parents.AsSpan(0, members.Length));
        var branch = new List<int> { root };
        for (var k = 0; k < members.Length; k++)
        {
            if (members[k] != root && branch.Contains(_parents[k]))
            {
                branch.Add(members[k]);
            }
        }

        return [.. branch];
    }

    private void Remember()
    {
        for (var g = 0; g < _groups.Count; g++)
        {
            int[] members = [.. _groups[g].Order()];
            _ = Seen.TryAdd(string.Join(',', members), (members, _cost[g]));
        }
    }
}
