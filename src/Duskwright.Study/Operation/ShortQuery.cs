using System.Collections.Immutable;
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
    // Worn cells drive less through a fuse, so that it may no longer open; emptier ones are changed.
    private const double WornShare = 0.3;

    private const string Tried = "the worst of all resistances a short may have, near and far, fresh and worn cells";

    /// <summary>Judges every short with the fuse there is, and looks for the best fuse there could be.</summary>
    internal ShortResult Answer()
    {
        var question = new ProtectionQuestion(Sources(), NearOhms, FarOhms, CopperMetres, RoomCelsius, LoadAmps);
        var verdict = Protection.Judge(question, Fuse is null ? null : Range(Fuse));
        var worst = verdict.Hottest;
        var source = question.Sources.Single(s => s.Name == worst.Source);
        var chosen = Protection.Choose(question, [.. Fuses.Where(f => f.Resettable).Select(Range)]);
        return new ShortResult
        {
            Current = Current(worst, source),
            WireTemperature = Heat(worst, Current(worst, source)),
            HotSpot = HotSpot(verdict),
            Scorches = verdict.Scorches,
            FuseOpens = verdict.OpensEverywhere,
            Advice = chosen is null
                ? null
                : new FuseAdvice(Fuses.Single(f => f.Id == chosen.Fuse!.Name), Heat(chosen.Hottest, Figure.Given("current of the worst short that lasts", chosen.Hottest.Amps, "A", Tried, Certainty.Computed)), HotSpot(chosen)),
        };
    }

    private static FuseRange Range(FusePart fuse) => new(
        fuse.Id, fuse.Hold.Amperes, fuse.Trip.Amperes, fuse.LeastResistance.Ohms, fuse.MostResistance.Ohms, fuse.MostVoltage?.Volts ?? double.PositiveInfinity);

    private static Figure HotSpot(ProtectionVerdict verdict) => Figure.Given("most heat in the short itself", verdict.HotSpot.ShortWatts, "W", Tried, Certainty.Computed);

    private Figure Current(SweptShort worst, ShortSource source)
    {
        var pathOhms = worst.AtFarEnd ? FarOhms : NearOhms;
        var fuseOhms = Fuse?.LeastResistance.Ohms ?? 0;
        if (worst.Amps >= source.LimitAmps)
        {
            return Figure.Given("current of the short", worst.Amps, "A", "the most the supply gives", Certainty.Computed);
        }

        return Figure.From(
            Laws.CurrentOfShort,
            "current of the short",
            "A",
            Figure.Given($"open volts, {source.Name}", source.OpenVolts, "V", Supply.Source, Supply.Certainty),
            Figure.Given("pack and holder", source.Ohms, "Ω", Supply.Source, Supply.Certainty),
            Figure.Given(worst.AtFarEnd ? "switch and wire to the far end and back" : "switch and joints at the bank", pathOhms, "Ω", "the worse of near and far", Certainty.Computed),
            Figure.Given("fuse", fuseOhms, "Ω", Fuse?.Source ?? "there is none", Fuse?.Certainty ?? Certainty.Assumed),
            Figure.Given("the short itself", worst.ShortOhms, "Ω", Tried, Certainty.Computed));
    }

    private Figure Heat(SweptShort worst, Figure current) => worst.Opens
        ? Figure.Given("wire in card", RoomCelsius, "°C", "every short opens the fuse", Certainty.Computed)
        : Figure.From(
            Laws.SteadyWireHeat,
            "wire in card",
            "°C",
            current,
            Figure.Given("copper of the thinnest pair", CopperMetres, "m", "the wire's size", Certainty.Catalogue),
            Figure.Given("room", RoomCelsius, "°C", "as said of the show, or 20 °C", Certainty.Assumed));

    private ImmutableArray<ShortSource> Sources()
    {
        if (!PackLaws.IsStore(Supply))
        {
            return [new ShortSource("the supply", Supply.NominalVoltage.Volts * Series, Supply.SourceResistance!.Value.Ohms * Series / Parallel, Supply.CurrentLimit is { } limit ? limit.Amperes * Parallel : double.PositiveInfinity)];
        }

        var pack = PackLaws.Of(Supply, Series, Parallel, Usual.HolderOhms);
        ShortSource With(string name, double left) => new(name, pack.OpenVolts(CellState.At(pack.Cell, left)), pack.Ohms(CellState.At(pack.Cell, left)));
        return [With("fresh cells", 1), With("worn cells", WornShare)];
    }
}
