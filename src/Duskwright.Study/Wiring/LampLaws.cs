using Duskwright.Circuits.Lamps;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;

namespace Duskwright.Study.Wiring;

/// <summary>Catalogue lamps as laws of the circuit engine.</summary>
internal static class LampLaws
{
    internal static LedLaw Lit(LampPart part) => new(
        part.ReferenceVoltage.Volts, part.ReferenceCurrent.Amperes, part.Ideality, part.SeriesResistance.Ohms);

    internal static LampLaw Of(LampPart part) => part.Kind switch
    {
        LampKind.Filament => new FilamentLaw(part.ReferenceVoltage.Volts, part.ReferenceCurrent.Amperes),
        LampKind.Flickering => new FlickerLaw(
            Lit(part), (part.OffCurrent ?? Current.FromMilliamperes(1)).Amperes, part.OnShare ?? 0.65, (part.LeastVoltage ?? Voltage.FromVolts(2)).Volts),
        _ => Lit(part),
    };

    /// <summary>The part at one end of its spread; an unknown part becomes the likely one that takes least or most.</summary>
    internal static LampPart AtCorner(Town town, ResolvedLamp lamp, Corner corner)
    {
        if (corner == Corner.Typical)
        {
            return lamp.Part;
        }

        var part = !lamp.PartUnknown
            ? lamp.Part
            : Catalogue.FindLamp(town, corner == Corner.Low ? Usual.UnknownLamps.Least : Usual.UnknownLamps.Most)!;
        var spread = part.VoltageSpread.Volts * (corner == Corner.Low ? 1 : -1);
        return part with { ReferenceVoltage = Voltage.FromVolts(part.ReferenceVoltage.Volts + spread) };
    }
}
