using System.Collections.Immutable;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Supplies;

/// <summary>Packs running down while they feed a network.</summary>
public static class Discharge
{
    // The first steps are a hundredth of the usual, then each may be a quarter longer than all time before: the start is steep.
    private const double FirstStepShare = 0.01;
    private const double GrowthShare = 0.25;

    // A cell this near empty has nothing more to tell.
    private const double DryShare = 0.004;

    /// <summary>Runs the packs down.</summary>
    /// <param name="network">The network; its sources named by the packs take their voltage and resistance from them.</param>
    /// <param name="packs">The packs.</param>
    /// <param name="settings">How long each day, how far, how finely.</param>
    /// <returns>The steps, the first at the start. It ends when a cell is dry, when told to stop, or at the most hours.</returns>
    /// <exception cref="InvalidOperationException">The network has no solution; the message names the element.</exception>
    public static DischargeRun Run(Network network, ImmutableArray<PackOnNetwork> packs, DischargeSettings settings)
    {
        var solver = new NetworkSolver(network);
        var sourceAt = packs.Select(p => network.Elements.Select((e, i) => (e, i)).First(x => x.e.Name == p.SourceName).i).ToArray();
        var states = packs.Select(p => p.Start).ToImmutableArray();
        var steps = ImmutableArray.CreateBuilder<DischargeStep>();
        var (lit, today) = (0.0, 0.0);
        var start = ImmutableArray<double>.Empty;
        while (true)
        {
            var solution = solver.Solve(WithPacks(network, packs, sourceAt, states), start.AsSpan());
            if (solution.Status != SolveStatus.Solved)
            {
                throw new InvalidOperationException($"The circuit has no solution at {solution.FailedAt} ({solution.Status}).");
            }

            start = solution.NodeVolts;
            var step = new DischargeStep(lit, solution, states);
            steps.Add(step);
            if (lit >= settings.MostLitSeconds || settings.Stop?.Invoke(step) == true
                || packs.Where((p, i) => p.Law.Cell.AvailableLeft(states[i]) < DryShare).Any())
            {
                return new DischargeRun(steps.ToImmutable());
            }

            var seconds = Math.Min(settings.MostLitSeconds - lit, settings.LitSecondsPerDay - today);
            for (var i = 0; i < packs.Length; i++)
            {
                var amps = Math.Abs(solution.ElementAmps[sourceAt[i]]) / packs[i].Law.Parallel;
                var usual = settings.StepShare * packs[i].Law.Cell.ChargeCoulombs / Math.Max(amps, 1e-9);
                seconds = Math.Min(seconds, Math.Min(usual, (FirstStepShare * usual) + (GrowthShare * lit)));
            }

            states = [.. states.Select((s, i) => packs[i].Law.Cell.Advance(s, solution.ElementAmps[sourceAt[i]] / packs[i].Law.Parallel, seconds))];
            lit += seconds;
            today += seconds;
            if (today >= settings.LitSecondsPerDay && settings.LitSecondsPerDay < SecondsPerDay)
            {
                states = [.. states.Select((s, i) => packs[i].Law.Cell.Advance(s, 0, SecondsPerDay - settings.LitSecondsPerDay))];
                today = 0;
            }
            else if (today >= settings.LitSecondsPerDay)
            {
                today = 0;
            }
        }
    }

    private const double SecondsPerDay = 86400;

    private static Network WithPacks(Network network, ImmutableArray<PackOnNetwork> packs, int[] sourceAt, ImmutableArray<CellState> states)
    {
        var elements = network.Elements.ToBuilder();
        for (var i = 0; i < packs.Length; i++)
        {
            var source = (SourceElement)elements[sourceAt[i]];
            elements[sourceAt[i]] = source with { OpenVolts = packs[i].Law.OpenVolts(states[i]), Ohms = packs[i].Law.Ohms(states[i]) };
        }

        return new Network(network.NodeCount, elements.MoveToImmutable());
    }
}

/// <summary>A pack and the source that stands for it.</summary>
/// <param name="SourceName">Name of the source in the network.</param>
/// <param name="Law">The pack.</param>
/// <param name="Start">The wells of each cell at the start.</param>
public sealed record PackOnNetwork(string SourceName, PackLaw Law, CellState Start);

/// <summary>How a discharge is run.</summary>
/// <param name="LitSecondsPerDay">Time the lamps burn each day, s; the rest of the 24 hours the cells rest.</param>
/// <param name="MostLitSeconds">Time lit after which to end, s.</param>
/// <param name="Stop">Ends the run after a step of which it says true.</param>
/// <param name="StepShare">The largest share of a pack's charge drawn in one step.</param>
public sealed record DischargeSettings(
    double LitSecondsPerDay, double MostLitSeconds, Func<DischargeStep, bool>? Stop = null, double StepShare = 0.01);

/// <summary>A discharge.</summary>
/// <param name="Steps">Its steps, the first at the start.</param>
public sealed record DischargeRun(ImmutableArray<DischargeStep> Steps);

/// <summary>One step of a discharge.</summary>
/// <param name="LitSeconds">Time lit so far, s.</param>
/// <param name="Solution">Voltages and currents then.</param>
/// <param name="Packs">The wells of each pack's cells then.</param>
public sealed record DischargeStep(double LitSeconds, Solution Solution, ImmutableArray<CellState> Packs);
