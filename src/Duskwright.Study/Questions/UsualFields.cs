using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;
using Duskwright.Study.Sums;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Questions;

/// <summary>What several questions ask alike, with what a beginner usually has, and the parts those answers name.</summary>
internal static class UsualFields
{
    internal static AskedChoice Cell { get; } = new("cell", "Cells", "LR6", Catalogue.Parts.Supplies.Select(s => new Choice(s.Id, s.Name)).ToItemList());

    internal static AskedNumber Cells { get; } = new("cells", "How many in a row", 3, 1, 12) { Whole = true };

    internal static AskedChoice OfLamp { get; } = LampChoice("lamp", "Lamp", "led-0603-warm-white");

    internal static AskedNumber Milliamperes { get; } = new("ma", "Current of each lamp, mA", 2, 0.1, 30);

    internal static AskedNumber AllMilliamperes { get; } = new("ma", "All lamps together, mA", 150, 1, 5000);

    internal static AskedNumber Ohms { get; } = new("ohm", "Resistor at each, Ω (0 for none)", 820, 0, 100_000);

    internal static AskedNumber Lamps { get; } = new("lamps", "How many lamps", 20, 1, 500) { Whole = true };

    internal static AskedNumber Hours { get; } = new("hours", "Hours of a day's show", 8, 0.5, 24);

    internal static AskedNumber Days { get; } = new("days", "Days without changing cells", 1, 1, 60) { Whole = true };

    internal static AskedChoice Wire { get; } = new("wire", "Wire", "cu-0.20", Catalogue.Parts.Wires.Select(w => new Choice(w.Id, w.Name)).ToItemList());

    internal static AskedNumber Millimetres { get; } = new("mm", "Distance, mm", 1000, 1, 20_000);

    private static Town Nowhere { get; } = new() { Name = "" };

    internal static AskedChoice LampChoice(string option, string label, string usual) => new(option, label, usual, Catalogue.Parts.Lamps.Select(l => new Choice(l.Id, l.Name)).ToItemList());

    internal static Supply SupplyOf(Given given) => new() { Id = "1", Part = given[Cell], Series = (int)given[Cells] };

    internal static SupplyPart PartOf(Supply supply) => Catalogue.FindSupply(Nowhere, supply.Part)!;

    internal static LampPart LampOf(Given given, AskedChoice? asked = null) => Catalogue.FindLamp(Nowhere, given[asked ?? OfLamp])!;

    internal static WirePart WireOf(Given given) => Catalogue.FindWire(Nowhere, given[Wire])!;

    /// <summary>What the lamps would suffer with the resistor said; none where they are at ease.</summary>
    internal static string? TooMuch(Given given)
    {
        var (supply, lamp) = (SupplyOf(given), LampOf(given));
        var amps = LampLaws.Of(lamp).At(PartOf(supply).NominalVoltage.Volts * supply.Series, given[Ohms]).Amps;
        if (lamp.MostCurrent is not { } most || amps <= most.Amperes)
        {
            return null;
        }

        var fit = QuickSums.WhichResistor(supply, lamp, Current.FromAmperes(Usual.LampAmps)).Headline;
        return $"Each lamp would be driven with {FigureText.Of(amps, "A")} where it may have {FigureText.Of(most.Amperes, "A")} for long, and dies.{(fit is { Unit: "Ω", Value: > 0 } ? $" Fit {FigureText.Of(fit)} at each before you power it." : "")}";
    }

    internal static Resistance OhmsOf(Given given) => Resistance.FromOhms(given[Ohms]);

    internal static Show ShowOf(Given given) => new() { HoursPerDay = Duration.FromHours(given[Hours]), Days = (int)given[Days] };
}
