using Duskwright.Circuits.Lamps;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Operation;

/// <summary>The figures of one lamp in a solved circuit.</summary>
internal static class LampFigures
{
    internal static Figure Resistor(ResolvedLamp lamp)
    {
        var (source, certainty) = lamp.ResistorOrigin switch
        {
            ResistorOrigin.Stated => ("as said of this lamp; parts to 5 %", Certainty.Catalogue),
            ResistorOrigin.Usual => ("the town's usual resistor; parts to 5 %", Certainty.Catalogue),
            ResistorOrigin.Unknown => ("not known; taken as usual", Certainty.Assumed),
            _ => ("chosen here: next preferred value up, E12 of IEC 60063", Certainty.Assumed),
        };
        return Figure.Given("resistor", lamp.ResistorOhms.Typical, "Ω", source, certainty).Between(lamp.ResistorOhms.Low, lamp.ResistorOhms.High);
    }

    internal static Figure Current(ResolvedLamp lamp, CircuitRun run, int index, Figure resistor, double lowAmps, double highAmps)
    {
        var circuitLamp = run.Circuit.Lamps[index];
        var pack = run.Circuit.Packs[circuitLamp.Pack];
        var branchVolts = run.BranchVolts(index);
        var point = circuitLamp.Law.At(branchVolts, circuitLamp.Input.BranchOhms);
        var part = circuitLamp.Input.Part;
        Figure current;
        if (part.Kind is LampKind.Led or LampKind.ReadyWired && lamp.ResistorOhms.Typical > 0)
        {
            var packVolts = run.Fresh.NodeVolts[pack.Plus];
            var lost = packVolts - branchVolts + (point.Amps * lamp.TailOhms);
            current = Figure.From(
                Laws.LampThroughResistor,
                "current of one lamp",
                "A",
                Figure.Given("pack under load", packVolts, "V", "computed with all switches on, cells as they are at the start", Certainty.Computed),
                Figure.Given("wire, switch and joints", lost, "V", "computed from the lengths, wires and joints", Certainty.Computed),
                Figure.Given("lamp at this current", branchVolts - (point.Amps * circuitLamp.Input.BranchOhms), "V", part.Source, part.Certainty)
                    .Between(point.LampVolts - part.VoltageSpread.Volts, point.LampVolts + part.VoltageSpread.Volts),
                resistor);
        }
        else
        {
            current = OnCurve(part, branchVolts, circuitLamp.Input.BranchOhms);
        }

        return current.Between(lowAmps, highAmps);
    }

    private static Figure OnCurve(LampPart part, double branchVolts, double branchOhms)
    {
        var volts = Figure.Given("left at the lamp's leads", branchVolts, "V", "computed with all switches on, cells as they are at the start", Certainty.Computed);
        var ohms = Figure.Given("resistor, tails and joints of the lamp", branchOhms, "Ω", "from the lengths and joints", Certainty.Computed);
        Figure Of(string name, double value, string unit) => Figure.Given(name, value, unit, part.Source, part.Certainty);
        var refVolts = Of("lamp at its reference current", part.ReferenceVoltage.Volts, "V");
        var refAmps = Of("reference current", part.ReferenceCurrent.Amperes, "A");
        if (part.Kind == LampKind.Filament)
        {
            return Figure.From(Laws.FilamentLamp, "current of one lamp", "A", volts, ohms, refVolts, refAmps);
        }

        var ideality = Of("ideality", part.Ideality, "");
        var inside = Of("resistance inside the lamp", part.SeriesResistance.Ohms, "Ω");
        if (part.Kind != LampKind.Flickering)
        {
            return Figure.From(Laws.LampOnItsCurve, "current of one lamp", "A", volts, ohms, refVolts, refAmps, ideality, inside);
        }

        var flicker = (FlickerLaw)LampLaws.Of(part);
        return Figure.From(
            Laws.FlickeringLamp,
            "mean current of one lamp",
            "A",
            volts,
            ohms,
            refVolts,
            refAmps,
            ideality,
            inside,
            Of("dark current at 3 V", flicker.OffAmpsAt3Volts, "A"),
            Of("lit share", flicker.OnShare, "share"),
            Of("least volts", flicker.LeastVolts, "V"));
    }
}
