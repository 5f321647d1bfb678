using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>Current and slope of an element at a voltage.</summary>
internal static class ElementLaw
{
    // Beyond its limit a regulated supply gives way like a resistance of a million times its own: nearly a constant current.
    private const double LimitSlope = 1e-6;

    internal static (double Amps, double Siemens) At(Element element, double voltsFromAToB, double sourceShare)
    {
        switch (element)
        {
            case ResistorElement resistor:
                return (voltsFromAToB / resistor.Ohms, 1 / resistor.Ohms);
            case LampElement lamp:
                var point = lamp.Law.At(voltsFromAToB, lamp.ResistorOhms);
                return (point.Amps, point.Siemens);
            case SourceElement source:
                return Source(sourceShare * source.OpenVolts, source.Ohms, source.LimitAmps, voltsFromAToB);
            default:
                throw new ArgumentException($"{element.Name} is of a kind the solver does not know.", nameof(element));
        }
    }

    /// <summary>The same for a lamp or source of which only the numbers are at hand, or a resistance in its place.</summary>
    internal static (double Amps, double Siemens) At(NetworkValues values, int element, double voltsFromAToB)
    {
        if (values.Laws[element] is { } law)
        {
            var sign = values.Turned[element] ? -1 : 1;
            var point = law.At(sign * voltsFromAToB, values.Ohms[element]);
            return (sign * point.Amps, point.Siemens);
        }

        return values.LimitAmps[element] > 0
            ? Source(values.OpenVolts[element], values.Ohms[element], values.LimitAmps[element], voltsFromAToB)
            : (voltsFromAToB / values.Ohms[element], 1 / values.Ohms[element]);
    }

    // A is the minus and B the plus, so the current from A to B is what the source delivers.
    private static (double Amps, double Siemens) Source(double openVolts, double ohms, double limitAmps, double voltsFromAToB)
    {
        var free = (openVolts + voltsFromAToB) / ohms;
        return free <= limitAmps ? (free, 1 / ohms) : (limitAmps + (LimitSlope * (free - limitAmps)), LimitSlope / ohms);
    }
}
