using Duskwright.Faults.Finding;
using Duskwright.Faults.Tagging;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Mending;

/// <summary>Weighs what a meter showed at the pair of a house, taken off the bank.</summary>
internal static class OffBank
{
    /// <summary>How well each fault agrees; none where the house has no pair of its own or several.</summary>
    internal static PairFinding? Weigh(TestPointQuery? house, IEnumerable<OffBankReading> readings) =>
        Tagged(house) is { } tagged ? PairMeter.Weigh(tagged, [.. readings.Select(r => new PairReading(Range(r), r.Reversed, r.Value))], FaultPriors.Usual.Misread) : null;

    /// <summary>What is wrong with a reading, in a sentence; none where sound parts give it.</summary>
    internal static string? Wrong(TestPointQuery? house, OffBankReading reading) =>
        Tagged(house) is { } tagged && Weigh(house, [reading])!.Condemns
            ? $"With power off the meter shows {Shown(reading, reading.Value)}{(reading.Reversed ? ", its leads changed over" : "")}; sound parts show {Shown(reading, Expected(tagged, reading))}."
            : null;

    private static TaggedNetwork? Tagged(TestPointQuery? house) => house?.OffTheBank() is { } input ? FaultTableQuery.Tagged(CircuitNetwork.Of(input)) : null;

    private static double? Expected(TaggedNetwork tagged, OffBankReading reading) => PairMeter.Shows(tagged.Network, tagged.Packs[0].Source, Range(reading), reading.Reversed);

    private static PairRange Range(OffBankReading reading) => reading.IsDiodeRange ? PairRange.Diode : PairRange.Ohms;

    private static string Shown(OffBankReading reading, double? value) => value is { } v
        ? FigureText.Of(v, reading.IsDiodeRange ? "V" : "Ω")
        : reading.IsDiodeRange ? "no number on the diode range" : "no number on the ohms range";
}
