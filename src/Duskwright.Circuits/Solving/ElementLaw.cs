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
                // A is the minus and B the plus, so the current from A to B is what the source delivers.
                var free = ((sourceShare * source.OpenVolts) + voltsFromAToB) / source.Ohms;
                return free <= source.LimitAmps
                    ? (free, 1 / source.Ohms)
                    : (source.LimitAmps + (LimitSlope * (free - source.LimitAmps)), LimitSlope / source.Ohms);
            default:
                throw new ArgumentException($"{element.Name} is of a kind the solver does not know.", nameof(element));
        }
    }
}
