using System.Numerics;
using Duskwright.Circuits.Lamps;
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
    internal static (double Amps, double Siemens) At(NetworkValues values, int element, double voltsFromAToB) =>
        At(values.Laws[element], values.Turned[element] ? -1 : 1, values.Ohms[element], values.OpenVolts[element], values.LimitAmps[element], voltsFromAToB);

    /// <summary>The same for a lamp where a law is given, for a source where it has a limit, otherwise for a resistance.</summary>
    internal static (double Amps, double Siemens) At(LampLaw? law, double sign, double ohms, double openVolts, double limitAmps, double voltsFromAToB)
    {
        if (law is not null)
        {
            var point = law.At(sign * voltsFromAToB, ohms);
            return (sign * point.Amps, point.Siemens);
        }

        return limitAmps > 0 ? Source(openVolts, ohms, limitAmps, voltsFromAToB) : (voltsFromAToB / ohms, 1 / ohms);
    }

    /// <summary>Several sources side by side.</summary>
    internal static (Vector<double> Amps, Vector<double> Siemens) Source(Vector<double> openVolts, Vector<double> ohms, Vector<double> limitAmps, Vector<double> voltsFromAToB)
    {
        var free = (openVolts + voltsFromAToB) / ohms;
        var isFree = Vector.LessThanOrEqual(free, limitAmps);
        var siemens = Vector<double>.One / ohms;
        return (
            Vector.ConditionalSelect(isFree, free, limitAmps + (LimitSlope * (free - limitAmps))),
            Vector.ConditionalSelect(isFree, siemens, LimitSlope * siemens));
    }

    // A is the minus and B the plus, so the current from A to B is what the source delivers.
    private static (double Amps, double Siemens) Source(double openVolts, double ohms, double limitAmps, double voltsFromAToB)
    {
        var free = (openVolts + voltsFromAToB) / ohms;
        return free <= limitAmps ? (free, 1 / ohms) : (limitAmps + (LimitSlope * (free - limitAmps)), LimitSlope / ohms);
    }
}
