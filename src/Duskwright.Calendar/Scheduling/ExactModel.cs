using System.Globalization;
using Google.OrTools.Sat;
using Google.OrTools.Util;

namespace Duskwright.Calendar.Scheduling;

/// <summary>The work as a constraint model: starts inside sessions, waits, and what may be taken at one time.</summary>
internal sealed class ExactModel
{
    private readonly Network _network;
    private readonly int _horizon;
    private readonly CpModel _model = new();
    private readonly IntVar[] _starts;
    private readonly Dictionary<int, BoolVar> _windows = [];

    /// <summary>Makes the model.</summary>
    /// <param name="network">The work.</param>
    /// <param name="earliest">Earliest start of each job.</param>
    /// <param name="horizon">The minute by which all is to be done and dry.</param>
    /// <param name="namedWindows">Whether each latest time hangs on a switch of its own, to tell which of them clash.</param>
    internal ExactModel(Network network, int[] earliest, int horizon, bool namedWindows = false)
    {
        (_network, _horizon) = (network, horizon);
        _starts = [.. Enumerable.Range(0, network.Count).Select(j => _model.NewIntVarFromDomain(Room(j, earliest[j]), $"start {j}"))];
        foreach (var arc in network.Arcs)
        {
            var kept = _model.Add(_starts[arc.To] >= _starts[arc.From] + arc.Minutes);
            if (namedWindows && arc.IsLatest)
            {
                if (!_windows.TryGetValue(arc.Lag, out var window))
                {
                    _windows[arc.Lag] = window = _model.NewBoolVar($"window {arc.Lag}");
                }

                kept.OnlyEnforceIf(window);
            }
        }

        for (var r = 0; r < network.Work.Resources.Length; r++)
        {
            Take(r);
        }
    }

    /// <summary>Looks for the earliest finish.</summary>
    /// <param name="bound">A finish that is known to be too early or just possible.</param>
    /// <param name="hint">Starts that are known to work.</param>
    /// <param name="settings">Limits.</param>
    /// <param name="cancel">Stops the search.</param>
    internal (CpSolverStatus Status, int[] Starts, int Bound) EarliestFinish(int bound, int[]? hint, ScheduleSettings settings, CancellationToken cancel)
    {
        // A finish that must lie behind the horizon is no variable the solver would take.
        if (bound > _horizon)
        {
            return (CpSolverStatus.Infeasible, [], bound);
        }

        var finish = _model.NewIntVar(bound, _horizon, "finish");
        for (var j = 0; j < _network.Count; j++)
        {
            _model.Add(finish >= _starts[j] + _network.Minutes[j] + _network.Work.Jobs[j].DryingMinutes);
            if (hint is not null)
            {
                _model.AddHint(_starts[j], hint[j]);
            }
        }

        _model.Minimize(finish);
        return Run(settings, settings.DeterministicLimit, cancel);
    }

    /// <summary>Looks for the fewest half-built houses within the horizon.</summary>
    /// <param name="hint">Starts that are known to work.</param>
    /// <param name="most">How many houses those have half built at the worst time.</param>
    /// <param name="settings">Limits.</param>
    /// <param name="cancel">Stops the search.</param>
    internal (CpSolverStatus Status, int[] Starts, int Bound) FewestHalfBuilt(int[] hint, int most, ScheduleSettings settings, CancellationToken cancel)
    {
        var peak = _model.NewIntVar(1, most, "half built");
        var open = _model.AddCumulative(peak);
        for (var h = 0; h < _network.Houses.Length; h++)
        {
            var first = _model.NewIntVar(0, _network.Work.BegunHouses.Contains(_network.Houses[h]) ? 0 : _horizon, $"house {h} begun");
            var last = _model.NewIntVar(0, _horizon, $"house {h} ended");
            var between = _model.NewIntVar(0, _horizon, $"house {h}");
            foreach (var j in Enumerable.Range(0, _network.Count).Where(j => _network.HouseOf[j] == h))
            {
                _model.Add(first <= _starts[j]);
                _model.Add(last >= _starts[j] + _network.Minutes[j]);
            }

            open.AddDemand(_model.NewIntervalVar(first, between, last, $"half built {h}"), 1);
        }

        for (var j = 0; j < _network.Count; j++)
        {
            _model.AddHint(_starts[j], hint[j]);
        }

        _model.Minimize(peak);
        return Run(settings, settings.DeterministicLimit / 2, cancel);
    }

    /// <summary>The latest times that clash, as few as can be told within the limit.</summary>
    /// <param name="settings">Limits.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <returns>Indices of lags; empty where the clash is not one of latest times.</returns>
    internal IReadOnlyList<int> ClashingWindows(ScheduleSettings settings, CancellationToken cancel)
    {
        var clash = _windows.Keys.Order().ToList();
        foreach (var lag in _windows.Keys.Order())
        {
            var without = clash.Where(l => l != lag).ToList();
            _model.ClearAssumptions();
            _model.AddAssumptions(without.Select(l => _windows[l]));
            if (Run(settings, settings.DeterministicLimit / 4, cancel).Status == CpSolverStatus.Infeasible)
            {
                clash = without;
            }
        }

        return clash;
    }

    // Starts from which the job ends within a session and is dry by the horizon.
    private Domain Room(int job, int earliest)
    {
        var latest = _horizon - _network.Minutes[job] - _network.Work.Jobs[job].DryingMinutes;
        if (_network.Work.Sessions.IsEmpty || _network.Minutes[job] == 0)
        {
            return new Domain(earliest, latest);
        }

        return Domain.FromIntervals([.. _network.Work.Sessions
            .Select(s => new long[] { Math.Max(s.From, earliest), Math.Min(s.To - _network.Minutes[job], latest) })
            .Where(room => room[0] <= room[1])]);
    }

    private void Take(int resource)
    {
        var capacity = _network.Work.Resources[resource].Capacity;
        var taken = (
            from j in Enumerable.Range(0, _network.Count)
            from use in _network.Uses[j]
            where use.Resource == resource && _network.Minutes[j] + use.Held > 0
            select (Interval: _model.NewFixedSizeIntervalVar(_starts[j], _network.Minutes[j] + use.Held, $"{j} takes {resource}"), use.Amount)).ToList();
        if (taken.TrueForAll(t => 2 * t.Amount > capacity))
        {
            _model.AddNoOverlap(taken.Select(t => t.Interval));
            return;
        }

        var together = _model.AddCumulative(capacity);
        foreach (var (interval, amount) in taken)
        {
            together.AddDemand(interval, amount);
        }
    }

    private (CpSolverStatus Status, int[] Starts, int Bound) Run(ScheduleSettings settings, double limit, CancellationToken cancel)
    {
        var solver = new CpSolver
        {
            // One worker repeats exactly; without linear relaxations the proofs of the published problems take a fifth of the time.
            StringParameters = string.Create(
                CultureInfo.InvariantCulture,
                $"num_workers:1 linearization_level:0 random_seed:{settings.Seed} max_deterministic_time:{limit}"),
        };
        using var stop = cancel.Register(solver.StopSearch);
        var status = solver.Solve(_model);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? (status, [.. _starts.Select(s => (int)solver.Value(s))], (int)Math.Ceiling(solver.BestObjectiveBound - 1e-6))
            : (status, [], 0);
    }
}
