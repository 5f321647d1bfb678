using Duskwright.Circuits.Solving;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Operation;

/// <summary>One switch on, all others off, cells as they are at the start.</summary>
internal sealed record SwitchAlone(CircuitInput Input)
{
    internal SwitchCurrents Answer()
    {
        var circuit = CircuitNetwork.Of(Input);
        var solution = OperatingPoint.Solve(circuit.Network);
        return new SwitchCurrents([.. circuit.Lamps.Select(l => Figure.Given(
            $"{l.Input.Name} of {l.Building}", solution.ElementAmps[l.Element], "A", "computed with this switch alone on", Certainty.Computed))]);
    }
}

/// <summary>The current of each lamp on a switch.</summary>
internal sealed record SwitchCurrents(IReadOnlyList<Figure> Currents);
