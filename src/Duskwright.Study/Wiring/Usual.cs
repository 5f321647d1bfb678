using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Wiring;

/// <summary>What is taken where a town says nothing. Rules of the trade are common practice, no source.</summary>
internal static class Usual
{
    internal const string Lamp = "led-0603-warm-white";
    internal const string Wire = "cu-0.20";
    internal const string TailWire = "cu-0.10";
    internal const string Cell = "LR6";
    internal const int CellsInSeries = 3;
    internal const string ThinWire = "cu-0.10";
    internal const string ThickWire = "cu-0.50";
    internal const double LampAmps = 0.002;
    internal const double TailMetres = 0.08;
    internal const double SlackMetres = 0.25;
    internal const double DetourFactor = 1.4;
    internal const double UnknownDistanceMetres = 0.4;
    internal const double NearMetres = 0.1;
    internal const double FarMetres = 1;
    internal const double JointOhms = 0.01;
    internal const double SpareShare = 0.1;
    internal const double RoomCelsius = 20;

    // Two joints on each conductor of a pair, one at the bank and one in the house.
    internal const int JointsPerConductor = 2;

    // Resistors are bought to 5 %, E12 and E24 (IEC 60063).
    internal const double ResistorTolerance = 0.05;

    // Above this a flickering lamp wants a resistor: common practice, no source (3.2 to 5 V by maker).
    internal const double FlickerWithoutResistorVolts = 3.5;

    internal static double HolderOhms { get; } = Contact(SundryUse.Holder);

    internal static double SwitchOhms { get; } = Contact(SundryUse.Switch);

    /// <summary>Lamps that an unknown one may be: the steadiest spread of what is sold for houses.</summary>
    internal static (string Least, string Most) UnknownLamps => ("led-0603-warm-white", "led-3mm-yellow");

    internal static LampPart LampOf(Town town, string? id) =>
        Catalogue.FindLamp(town, id is null or PartId.Unknown ? town.Wiring.Led ?? Lamp : id)!;

    internal static WirePart WireOf(Town town, string? id) =>
        Catalogue.FindWire(town, id is null or PartId.Unknown ? town.Wiring.Wire ?? Wire : id)!;

    private static double Contact(SundryUse use) => Catalogue.Parts.Sundries.First(s => s.Use == use).ContactResistance!.Value.Ohms;
}
