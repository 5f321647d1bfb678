using System.Collections.Immutable;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Supplies;

/// <summary>Packs running down while they feed a network.</summary>
/// <remarks>
/// Between two steps the wells move by their closed form under the mean current, which is carried on straight from the step before
/// (Adams and Bashforth's second order; Hairer, Nørsett and Wanner, Solving Ordinary Differential Equations I, section III.1). At the
/// end of a spell of light there are two steps of the same time: one as the lamps go out, one as they are lit again after the rest.
/// Where the run goes past dry cells, a cell that has given all it has no voltage of its own left, only its resistance: what the others
/// drive through it turns its poles round.
/// </remarks>
public static class Discharge
{
    // The first steps are a hundredth of the usual, then each may be a quarter longer than all time before: the start is steep.
    private const double FirstStepShare = 0.01;
    private const double GrowthShare = 0.25;

    // A cell this near empty has nothing more to tell.
    private const double DryShare = 0.004;

    // Less than a microampere would make a step longer than any show.
    private const double LeastAmps = 1e-6;

    /// <summary>Runs the packs down.</summary>
    /// <param name="network">The network; its sources named by the packs take their voltage and resistance from them.</param>
    /// <param name="packs">The packs.</param>
    /// <param name="settings">How long each day, how far, how finely.</param>
    /// <returns>The steps, the first at the start. It ends when a cell is dry, when told to stop, or at the most hours.</returns>
    /// <exception cref="ArgumentException">No source has the name of a pack.</exception>
    /// <exception cref="InvalidOperationException">The network has no solution; the message names the element.</exception>
    public static DischargeRun Run(Network network, ImmutableArray<PackOnNetwork> packs, DischargeSettings settings)
    {
        var solver = new NetworkSolver(network);
        var sourceAt = packs.Select(p => SourceOf(network, p.SourceName)).ToArray();
        var states = packs.Select(p => p.Start).ToImmutableArray();
        var steps = ImmutableArray.CreateBuilder<DischargeStep>();
        var start = ImmutableArray<double>.Empty;
        var (lit, spell) = (0.0, 0);
        var spellEnd = settings.Schedule.Spells[0].LitSeconds;
        var (lastAmps, lastSeconds) = (Array.Empty<double>(), 0.0);
        while (true)
        {
            var solution = solver.Solve(WithPacks(network, packs, sourceAt, states, settings.PastDryCells), start.AsSpan());
            if (solution.Status != SolveStatus.Solved)
            {
                throw new InvalidOperationException($"The circuit has no solution at {solution.FailedAt} ({solution.Status}).");
            }

            start = solution.NodeVolts;
            var step = new DischargeStep(lit, solution, states);
            steps.Add(step);
            if (lit >= settings.MostLitSeconds || settings.Stop?.Invoke(step) == true
                || (!settings.PastDryCells && packs.Where((p, i) => p.Law.Cell.AvailableLeft(states[i]) < DryShare).Any()))
            {
                return new DischargeRun(steps.ToImmutable());
            }

            if (lit >= spellEnd)
            {
                var restSeconds = settings.Schedule.Spells[spell].RestSeconds;
                spell = (spell + 1) % settings.Schedule.Spells.Length;
                spellEnd += settings.Schedule.Spells[spell].LitSeconds;
                if (restSeconds > 0)
                {
                    states = [.. states.Select((s, i) => packs[i].Law.Cell.Advance(s, 0, restSeconds))];
                    lastSeconds = 0;
                    continue;
                }
            }

            var cellAmps = packs.Select((p, i) => solution.ElementAmps[sourceAt[i]] / p.Law.Parallel).ToArray();
            var until = Math.Min(Math.Min(settings.MostLitSeconds, spellEnd), lit + StepSeconds(packs, cellAmps, settings.StepShare, lit));
            var seconds = until - lit;

            // After a very short step, which a spell's end can leave, the change of current is mostly rounding.
            var ahead = lastSeconds > 0 ? Math.Min(1, seconds / (2 * lastSeconds)) : 0;
            states = [.. states.Select((s, i) => packs[i].Law.Cell.Advance(s, ahead > 0 ? cellAmps[i] + (ahead * (cellAmps[i] - lastAmps[i])) : cellAmps[i], seconds))];
            (lastAmps, lastSeconds) = (cellAmps, seconds);
            lit = until;
        }
    }

    private static int SourceOf(Network network, string name)
    {
        for (var i = 0; i < network.Elements.Length; i++)
        {
            if (network.Elements[i] is SourceElement source && source.Name == name)
            {
                return i;
            }
        }

        throw new ArgumentException($"No source of the network is called {name}.", nameof(name));
    }

    private static double StepSeconds(ImmutableArray<PackOnNetwork> packs, double[] cellAmps, double stepShare, double lit)
    {
        var seconds = double.PositiveInfinity;
        for (var i = 0; i < packs.Length; i++)
        {
            var usual = stepShare * packs[i].Law.Cell.ChargeCoulombs / Math.Max(Math.Abs(cellAmps[i]), LeastAmps);
            seconds = Math.Min(seconds, Math.Min(usual, (FirstStepShare * usual) + (GrowthShare * lit)));
        }

        return seconds;
    }

    private static Network WithPacks(
        Network network, ImmutableArray<PackOnNetwork> packs, int[] sourceAt, ImmutableArray<CellState> states, bool pastDry)
    {
        var elements = network.Elements.ToBuilder();
        for (var i = 0; i < packs.Length; i++)
        {
            var source = (SourceElement)elements[sourceAt[i]];
            var ownShare = pastDry ? Math.Min(1, packs[i].Law.Cell.AvailableLeft(states[i]) / DryShare) : 1;
            elements[sourceAt[i]] = source with { OpenVolts = ownShare * packs[i].Law.OpenVolts(states[i]), Ohms = packs[i].Law.Ohms(states[i]) };
        }

        return new Network(network.NodeCount, elements.MoveToImmutable());
    }
}
