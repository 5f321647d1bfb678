using Duskwright.Circuits.Supplies;
using Duskwright.Circuits.Wires;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Operation;

/// <summary>What the verdict on a short circuit is computed from: a supply, its fuse, and the pairs that leave it.</summary>
internal sealed record ShortQuery(
    SupplyPart Supply, int Series, int Parallel, FusePart? Fuse, double LoadAmps, double NearOhms, double FarOhms, double CopperMetres, double RoomCelsius, ItemList<FusePart> Fuses)
{
    // A fuse that carries twice the load does not creep open when it is warm.
    private const double LoadMargin = 2;

    /// <summary>Judges the worst of a short at the bank's end and one at the far end of the longest pair.</summary>
    internal ShortResult Answer()
    {
        var (volts, ohms) = Source();
        var verdict = Worst(Fuse, volts, ohms);
        var atFarEnd = volts / (ohms + FarOhms + (Fuse?.MostResistance.Ohms ?? 0));
        var current = Figure.From(
            Laws.CurrentOfShort,
            "current of the short",
            "A",
            Figure.Given("open volts", volts, "V", Supply.Source, Supply.Certainty),
            Figure.Given("pack and holder", ohms, "Ω", Supply.Source, Supply.Certainty),
            Figure.Given("switch and wire on the way", verdict.PathOhms, "Ω", "the nearer end is the worse unless a fuse opens there", Certainty.Computed),
            Figure.Given("fuse", Fuse?.LeastResistance.Ohms ?? 0, "Ω", Fuse?.Source ?? "there is none", Fuse?.Certainty ?? Certainty.Assumed),
            Figure.Given("the short itself", verdict.Verdict.ShortOhms, "Ω", "the one of all tried that heats the wire most without opening the fuse", Certainty.Computed));
        return new ShortResult
        {
            Current = current,
            WireTemperature = Figure.From(
                Laws.SteadyWireHeat,
                "wire in card",
                "°C",
                current,
                Figure.Given("copper of the thinnest pair", CopperMetres, "m", "the wire's size", Certainty.Catalogue),
                Figure.Given("room", RoomCelsius, "°C", "as said of the show, or 20 °C", Certainty.Assumed)),
            HotSpot = Figure.Given("most heat in the short itself", verdict.Verdict.HotSpotWatts, "W", "the worst of all resistances a short may have", Certainty.Computed),
            FuseOpens = Fuse is not null && atFarEnd > Fuse.Trip.Amperes,
            SuggestedFuse = Fuses
                .Where(f => f.Resettable && f.Hold.Amperes >= LoadMargin * LoadAmps && volts / (ohms + FarOhms + f.MostResistance.Ohms) > f.Trip.Amperes)
                .MinBy(f => f.Hold.Milliamperes)?.Id,
        };
    }

    private (ShortVerdict Verdict, double PathOhms) Worst(FusePart? fuse, double volts, double ohms)
    {
        var law = fuse is null ? null : new FuseLaw(fuse.Hold.Amperes, fuse.Trip.Amperes, fuse.LeastResistance.Ohms);
        var near = ShortCircuit.Worst(volts, ohms, NearOhms, CopperMetres, RoomCelsius, law);
        var far = ShortCircuit.Worst(volts, ohms, FarOhms, CopperMetres, RoomCelsius, law);
        return near.WireCelsius >= far.WireCelsius ? (near, NearOhms) : (far, FarOhms);
    }

    private (double Volts, double Ohms) Source()
    {
        if (!PackLaws.IsStore(Supply))
        {
            return (Supply.NominalVoltage.Volts * Series, Math.Max(Supply.SourceResistance!.Value.Ohms, Supply.CurrentLimit is { } limit ? Supply.NominalVoltage.Volts / limit.Amperes : 0) * Series / Parallel);
        }

        var pack = PackLaws.Of(Supply, Series, Parallel, Usual.HolderOhms);
        var fresh = CellState.At(pack.Cell, 1);
        return (pack.OpenVolts(fresh), pack.Ohms(fresh));
    }
}
