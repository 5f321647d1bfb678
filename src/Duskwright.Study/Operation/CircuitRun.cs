using System.Collections.Immutable;
using Duskwright.Circuits.Solving;
using Duskwright.Circuits.Supplies;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Operation;

/// <summary>One circuit solved at the start and run down.</summary>
internal sealed class CircuitRun
{
    // Below a fifth of its light nobody asks how much is left.
    private const double NothingLeftShare = 0.2;
    private const double MostLitHours = 2000;
    private const double CoarseStepShare = 0.03;
    private const double FineStepShare = 0.01;
    private const double SecondsPerHour = 3600;

    private readonly Lazy<ImmutableArray<PackFade>> _fades;

    private CircuitRun(CircuitNetwork circuit, ImmutableArray<DischargeStep> steps)
    {
        Circuit = circuit;
        Steps = steps;
        _fades = new(() => [.. Enumerable.Range(0, circuit.Packs.Count).Select(p => FadeFigures.Of(this, p))]);
    }

    internal CircuitNetwork Circuit { get; }

    /// <summary>The steps; one for a circuit whose supplies never run down.</summary>
    internal ImmutableArray<DischargeStep> Steps { get; }

    /// <summary>How each pack fades, by its index.</summary>
    internal ImmutableArray<PackFade> Fades => _fades.Value;

    internal Solution Fresh => Steps[0].Solution;

    internal static CircuitRun Of(CircuitInput input)
    {
        var circuit = CircuitNetwork.Of(input);
        var stores = circuit.Stores;
        if (stores.IsEmpty)
        {
            return new CircuitRun(circuit, [new DischargeStep(0, Solved(OperatingPoint.Solve(circuit.Network)), [])]);
        }

        var fresh = new double[circuit.Lamps.Count];
        var settings = new DischargeSettings(
            input.LitHoursPerDay * SecondsPerHour,
            MostLitHours * SecondsPerHour,
            step =>
            {
                var allSpent = true;
                for (var i = 0; i < fresh.Length; i++)
                {
                    var light = LightAt(circuit, step.Solution, i);
                    fresh[i] = step.LitSeconds == 0 ? light : fresh[i];
                    allSpent &= step.LitSeconds > 0 && light < NothingLeftShare * fresh[i];
                }

                return allSpent;
            },
            input.Coarse ? CoarseStepShare : FineStepShare);
        return new CircuitRun(circuit, Discharge.Run(circuit.Network, stores, settings).Steps);
    }

    /// <summary>Light of a lamp at a step, 1 being steady light at its part's reference current.</summary>
    internal double Light(int step, int lamp) => LightAt(Circuit, Steps[step].Solution, lamp);

    /// <summary>Voltage across a lamp's branch at the start.</summary>
    internal double BranchVolts(int lamp)
    {
        var element = Circuit.Network.Elements[Circuit.Lamps[lamp].Element];
        return Fresh.NodeVolts[element.A] - Fresh.NodeVolts[element.B];
    }

    private static double LightAt(CircuitNetwork circuit, Solution solution, int index)
    {
        var lamp = circuit.Lamps[index];
        var element = circuit.Network.Elements[lamp.Element];
        return lamp.Law.At(solution.NodeVolts[element.A] - solution.NodeVolts[element.B], lamp.Input.BranchOhms).Light;
    }

    private static Solution Solved(Solution solution) =>
        solution.Status == SolveStatus.Solved
            ? solution
            : throw new InvalidOperationException($"The circuit has no solution at {solution.FailedAt} ({solution.Status}).");
}
