namespace Duskwright.Calendar.Scheduling;

/// <summary>Goes through the sessions minute by minute and takes up, of all jobs that can be begun, the first by a rule.</summary>
/// <remarks>
/// The parallel scheme of list scheduling (Kolisch, European Journal of Operational Research 90 (1996) 320). Where a job comes too
/// late after another (the glue has set), that other is held back and all is begun anew, a limited number of times.
/// </remarks>
internal sealed class RuleScheduler
{
    private const int MostRestarts = 40;

    // So many jobs fill any rest of a session; more would not fill it better.
    private const int MostFitting = 40;
    private readonly Network _network;
    private readonly int[] _rank;
    private readonly int _mostOpen;
    private readonly int[] _floor;
    private readonly int _sharedByAll;

    // The state of one run.
    private int[] _starts = [];
    private int[] _earliest = [];
    private int[] _waitsFor = [];
    private int[] _free = [];
    private int[] _leftInHouse = [];
    private bool[] _houseOpen = [];
    private int _open;
    private int[] _key = [];
    private SortedSet<(int Rank, int Job)> _available = [];
    private SortedSet<(int Rank, int Job)> _marks = [];
    private PriorityQueue<int, int> _waiting = new();
    private PriorityQueue<(int Resource, int Amount), int> _releases = new();
    private readonly List<int> _fitting = [];
    private readonly List<int> _fittingMinutes = [];

    private RuleScheduler(Network network, int[] earliest, int[] rank, int mostOpen)
    {
        (_network, _rank, _mostOpen, _floor) = (network, rank, mostOpen, [.. earliest]);
        var working = Enumerable.Range(0, network.Count).Where(j => network.Minutes[j] > 0).ToList();
        _sharedByAll = Enumerable.Range(0, network.Work.Resources.Length).FirstOrDefault(r => working.TrueForAll(j => network.Uses[j].Any(u => u.Resource == r)), -1);
    }

    /// <summary>Schedules by the rule.</summary>
    /// <param name="network">The work.</param>
    /// <param name="earliest">The earliest start of each job.</param>
    /// <param name="rank">The rule: of the jobs that can be begun, the one of lowest rank is.</param>
    /// <param name="mostOpen">No house is begun while so many are half built.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <returns>Starts; none where the rule finds no schedule.</returns>
    internal static int[]? Run(Network network, int[] earliest, int[] rank, int mostOpen, CancellationToken cancel)
    {
        var scheduler = new RuleScheduler(network, earliest, rank, mostOpen);
        for (var attempt = 0; attempt < MostRestarts && !cancel.IsCancellationRequested; attempt++)
        {
            switch (scheduler.Attempt(cancel))
            {
                case Outcome.Done:
                    return scheduler._starts;
                case Outcome.Stuck:
                    return null;
            }
        }

        return null;
    }

    private enum Outcome
    {
        Done,
        Stuck,
        TooLate,
    }

    private Outcome Attempt(CancellationToken cancel)
    {
        Begin();
        var (time, started) = (0, 0);
        while (started < _network.Count)
        {
            while (_waiting.TryPeek(out var job, out var at) && at <= time)
            {
                _waiting.Dequeue();
                _key[job] = Rank(job);
                (_network.Minutes[job] == 0 ? _marks : _available).Add((_key[job], job));
            }

            while (_releases.TryPeek(out var release, out var at) && at <= time)
            {
                _releases.Dequeue();
                _free[release.Resource] += release.Amount;
            }

            if (First(time) is { } first)
            {
                if (TooLateFor(first, time) is { } early)
                {
                    _floor[early.Job] = Math.Max(_floor[early.Job] + 1, early.NotBefore);
                    return Outcome.TooLate;
                }

                Start(first, time);
                started++;
            }
            else if (Next(time) is { } later && !cancel.IsCancellationRequested)
            {
                time = later;
            }
            else
            {
                return Outcome.Stuck;
            }
        }

        return Outcome.Done;
    }

    private void Begin()
    {
        _starts = Enumerable.Repeat(-1, _network.Count).ToArray();
        _earliest = [.. _floor];
        _waitsFor = [.. Enumerable.Range(0, _network.Count).Select(j => _network.Into[j].Count(IsWait))];
        _free = [.. _network.Work.Resources.Select(r => r.Capacity)];
        _leftInHouse = new int[_network.Houses.Length];
        foreach (var house in _network.HouseOf.Where(h => h >= 0))
        {
            _leftInHouse[house]++;
        }

        _houseOpen = [.. _network.Houses.Select(_network.Work.BegunHouses.Contains)];
        _open = _houseOpen.Count(open => open);
        _key = new int[_network.Count];
        (_available, _marks, _waiting, _releases) = ([], [], new(), new());
        foreach (var job in Enumerable.Range(0, _network.Count).Where(j => _waitsFor[j] == 0))
        {
            _waiting.Enqueue(job, _earliest[job]);
        }
    }

    // What must follow soon after something that is done goes before all else.
    private int Rank(int job) => _rank[job] - (_network.OutOf[job].Any(a => !IsWait(a) && _starts[a.To] >= 0) ? _network.Count : 0);

    private static bool IsWait(Arc arc) => arc is { IsLatest: false, Minutes: >= 0 };

    private int? First(int time)
    {
        if (FirstOf(_marks, time) is { } mark)
        {
            return mark;
        }

        if (_sharedByAll >= 0 && _free[_sharedByAll] == 0)
        {
            return null;
        }

        var room = Room(time);
        return room > SessionFill.MostMinutes ? FirstOf(_available, time) : Filling(time, room);
    }

    // Minutes left of the session; endless where there are none.
    private int Room(int time)
    {
        var s = _network.SessionAt(time);
        return s < _network.Work.Sessions.Length && _network.Work.Sessions[s].From <= time ? _network.Work.Sessions[s].To - time : int.MaxValue;
    }

    private int? Filling(int time, int room)
    {
        _fitting.Clear();
        _fittingMinutes.Clear();
        foreach (var (_, job) in _available)
        {
            if (_network.Minutes[job] <= room && CanStart(job, time))
            {
                _fitting.Add(job);
                _fittingMinutes.Add(_network.Minutes[job]);
                if (_fitting.Count == MostFitting)
                {
                    break;
                }
            }
        }

        return _fitting.Count == 0 ? null : _fitting[SessionFill.First(_fittingMinutes, room)];
    }

    private int? FirstOf(SortedSet<(int Rank, int Job)> jobs, int time)
    {
        foreach (var (_, job) in jobs)
        {
            if (CanStart(job, time))
            {
                return job;
            }
        }

        return null;
    }

    private bool CanStart(int job, int time)
    {
        if (_network.Fitting(job, time) != time || (_network.HouseOf[job] is >= 0 and var house && !_houseOpen[house] && _open >= _mostOpen))
        {
            return false;
        }

        foreach (var (resource, amount, _) in _network.Uses[job])
        {
            if (_free[resource] < amount)
            {
                return false;
            }
        }

        // What must follow soon must have its place in a session.
        foreach (var limit in _network.Into[job])
        {
            if (!IsWait(limit) && _starts[limit.From] < 0 && Followed(job, limit, time) is { } follows && !(_network.Fitting(limit.From, follows) <= time - limit.Minutes))
            {
                return false;
            }
        }

        return true;
    }

    private int? Followed(int job, Arc limit, int time)
    {
        int? follows = null;
        foreach (var wait in _network.OutOf[job])
        {
            if (IsWait(wait) && wait.To == limit.From)
            {
                follows = Math.Max(follows ?? 0, time + wait.Minutes);
            }
        }

        return follows;
    }

    private (int Job, int NotBefore)? TooLateFor(int job, int time)
    {
        foreach (var limit in _network.OutOf[job])
        {
            if (!IsWait(limit) && _starts[limit.To] is >= 0 and var begun && begun < time + limit.Minutes)
            {
                return (limit.To, time + limit.Minutes);
            }
        }

        return null;
    }

    private void Start(int job, int time)
    {
        (_network.Minutes[job] == 0 ? _marks : _available).Remove((_key[job], job));
        _starts[job] = time;
        foreach (var (resource, amount, held) in _network.Uses[job])
        {
            if (_network.Minutes[job] + held > 0)
            {
                _free[resource] -= amount;
                _releases.Enqueue((resource, amount), time + _network.Minutes[job] + held);
            }
        }

        if (_network.HouseOf[job] is >= 0 and var house)
        {
            _open += _houseOpen[house] ? 0 : 1;
            _houseOpen[house] = --_leftInHouse[house] > 0;
            _open -= _houseOpen[house] ? 0 : 1;
        }

        foreach (var arc in _network.OutOf[job])
        {
            if (IsWait(arc))
            {
                _earliest[arc.To] = Math.Max(_earliest[arc.To], time + arc.Minutes);
                if (--_waitsFor[arc.To] == 0)
                {
                    _waiting.Enqueue(arc.To, _earliest[arc.To]);
                }
            }
        }
    }

    private int? Next(int time)
    {
        var next = int.MaxValue;
        if (_waiting.TryPeek(out _, out var ready))
        {
            next = ready;
        }

        if (_releases.TryPeek(out _, out var release))
        {
            next = Math.Min(next, release);
        }

        var sessions = _network.Work.Sessions;
        var s = _network.SessionAt(time);
        if (s < sessions.Length && sessions[s].From <= time)
        {
            s++;
        }

        if (_available.Count > 0 && s < sessions.Length)
        {
            next = Math.Min(next, sessions[s].From);
        }

        return next == int.MaxValue ? null : next;
    }
}
