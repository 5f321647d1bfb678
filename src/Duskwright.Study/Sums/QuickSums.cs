using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;
using Duskwright.Study.Operation;
using Duskwright.Study.Questions;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Sums;

/// <summary>Quick questions that need no town.</summary>
public static class QuickSums
{
    // What shops have: common practice, no source.
    private static readonly string[] StockGauges = ["awg-22", "awg-24", "awg-26", "awg-28", "awg-30"];

    private static readonly Town Nowhere = new() { Name = "" };

    /// <summary>Which resistor goes in each lamp's lead?</summary>
    /// <param name="supply">The pack; only its part and cells in a row count.</param>
    /// <param name="lamp">The lamp.</param>
    /// <param name="current">The current wished for.</param>
    /// <returns>The preferred value, with what it gives.</returns>
    public static SumAnswer WhichResistor(Supply supply, LampPart lamp, Current current)
    {
        var part = Catalogue.FindSupply(Nowhere, supply.Part)!;
        var (pack, nominal) = (Results.SupplyWords.Of(supply, part), part.NominalVoltage.Volts * supply.Series);
        var lit = LampLaws.Lit(lamp);
        if (lamp.Kind is LampKind.ReadyWired or LampKind.Filament)
        {
            return new SumAnswer
            {
                Headline = Figure.Given("resistor", 0, "Ω", "the lamp is made for its voltage", Certainty.Catalogue),
                Words = $"A {lamp.Name} takes no resistor.",
            };
        }

        var volts = Figure.Given("supply", nominal, "V", part.Source, part.Certainty);
        var lampVolts = Figure.Given("lamp at that current", lit.VoltsAt(current.Amperes), "V", lamp.Source, lamp.Certainty);
        var wished = Figure.Given("current wished for", current.Amperes, "A", "as asked", Certainty.Assumed);
        var exact = Figure.From(Laws.ResistorExact, "resistor, exactly", "Ω", volts, lampVolts, wished);
        if (exact.Value <= 0)
        {
            return new SumAnswer
            {
                Headline = exact,
                Words = $"None will do: {pack} give {{0}} and a {lamp.Name} needs {{1}} at {{2}}.",
                Figures = [volts, lampVolts, wished],
                Warnings = ["Use one cell more, or 5 V, and ask again."],
            };
        }

        var ohms = PreferredValues.NextUp(PreferredValues.E12, Resistance.FromOhms(exact.Value)).Ohms;
        var preferred = Figure.Given("resistor", ohms, "Ω", "next preferred value up, E12 of IEC 60063", Certainty.Catalogue);
        var law = LampLaws.Of(lamp);
        var gives = law.At(nominal, ohms).Amps;
        var fresh = FreshVolts(part, supply.Series);
        var heat = Figure.From(Laws.HeatInResistor, "heat in the resistor", "W", Figure.Given("current", gives, "A", "the lamp's own curve", Certainty.Computed), preferred);
        return new SumAnswer
        {
            Headline = preferred,
            Words = $"One {{0}} resistor in each lamp's lead (exactly {{1}}, next preferred value up). It gives {{2}}, on brand-new cells {{3}}, and warms by {{4}}: a quarter watt is {(heat.Value < 0.125 ? "plenty" : "too little")}. Its bands: {ColourBands.Of(ohms)}.",
            Figures =
            [
                preferred,
                exact,
                Figure.Given("current", gives, "A", "the lamp's own curve at the nominal volts", Certainty.Computed),
                Figure.Given("current on new cells", law.At(fresh, ohms).Amps, "A", "the lamp's own curve at open volts of fresh cells", Certainty.Computed),
                heat,
            ],
            Steps = [$"{FigureText.Of(Below(ohms), "Ω")}, the next value down, gives {FigureText.Of(law.At(nominal, Below(ohms)).Amps, "A")}, on brand-new cells {FigureText.Of(law.At(fresh, Below(ohms)).Amps, "A")}; its bands: {ColourBands.Of(Below(ohms))}."],
            Warnings =
            [
                "One resistor a lamp: lamps that share one share its current unequally, and one failing shifts the load to the rest.",
                .. Late(part, supply.Series, lit.VoltsAt(0.001)),
            ],
        };
    }

    /// <summary>How many lamps can one pack carry, and for how long?</summary>
    /// <param name="supply">The pack.</param>
    /// <param name="lamp">The lamp.</param>
    /// <param name="ohms">Resistor at each lamp, 0 for none.</param>
    /// <param name="show">Hours and days, and what counts as dim.</param>
    /// <returns>The count, and by which criterion.</returns>
    public static SumAnswer HowManyLamps(Supply supply, LampPart lamp, Resistance ohms, Show show)
    {
        var part = Catalogue.FindSupply(Nowhere, supply.Part)!;
        var carrying = Carrying(supply, part, lamp, ohms, show).Answer();
        var hours = Figure.Given("hours of the show", show.HoursPerDay.Hours * show.Days, "h", "as asked", Certainty.Assumed);
        var fewest = carrying.VisiblyDimmer.Value <= carrying.DimByEnd.Value ? carrying.VisiblyDimmer : carrying.DimByEnd;
        return new SumAnswer
        {
            Headline = Figure.Given("lamps", fewest.Value - 1, "", fewest.Source, Certainty.Computed),
            Words = $"On {Results.SupplyWords.Of(supply, part)}, lamps look dimmer than one alone from {{0}} lamps on; they fall below half light before the {{1}} are over from {{2}} on, and are spoiled from {{3}} on.",
            Figures = [carrying.VisiblyDimmer, hours, carrying.DimByEnd, carrying.SpoiledByEnd],
            Warnings = [.. Late(part, supply.Series, LampLaws.Lit(lamp).VoltsAt(0.001)), .. ohms.Ohms == 0 && lamp.Kind == LampKind.Led ? ["Without a resistor one lamp of a bag may take twice what another takes; fit one in each lead."] : Array.Empty<string>()],
        };
    }

    /// <summary>How long do so many lamps last on a pack?</summary>
    /// <param name="supply">The pack.</param>
    /// <param name="lamp">The lamp.</param>
    /// <param name="ohms">Resistor at each lamp, 0 for none.</param>
    /// <param name="count">How many lamps, at least one.</param>
    /// <param name="show">Hours a day, and what counts as dim.</param>
    /// <returns>Hours to half light, and to a third.</returns>
    public static SumAnswer HowLong(Supply supply, LampPart lamp, Resistance ohms, int count, Show show)
    {
        var town = BenchTown.Of(supply, lamp, ohms, count, show);
        var pack = TownStudy.Of(town).Packs[0];
        if (pack.HoursToDim is not { } half)
        {
            return new SumAnswer
            {
                Headline = pack.Load!,
                Words = $"{pack.Words} carry {count} lamps with {{0}} and never fade below half light within 2,000 hours.",
                Figures = [pack.Load!],
                Town = town,
            };
        }

        return new SumAnswer
        {
            Headline = half,
            Words = pack.HoursToSpoiled is null ? "{0} in all: half light after {1}." : "{0} in all: half light after {1}, a third after {2}.",
            Figures = pack.HoursToSpoiled is { } third ? [pack.Load!, half, third] : [pack.Load!, half],
            Warnings = Late(pack.Part, supply.Series, LampLaws.Lit(lamp).VoltsAt(0.001)).ToItemList(),
            Town = town,
        };
    }

    /// <summary>Which wire carries a current over a distance?</summary>
    /// <param name="distance">One way.</param>
    /// <param name="current">All lamps together.</param>
    /// <param name="drop">The most that may be lost there and back.</param>
    /// <returns>The thinnest wire that will do.</returns>
    public static SumAnswer WhichWire(Length distance, Current current, Voltage drop)
    {
        var most = Figure.From(
            Laws.DropPerMetre,
            "ohms of a metre, at most",
            "Ω",
            Figure.Given("drop allowed", drop.Volts, "V", "as asked", Certainty.Assumed),
            Figure.Given("distance", distance.Metres, "m", "as asked", Certainty.Assumed),
            Figure.Given("current", current.Amperes, "A", "as asked", Certainty.Assumed));
        var wires = Catalogue.Parts.Wires.Where(w => w.PerMetre.Ohms <= most.Value).OrderByDescending(w => w.PerMetre.Ohms).ToList();
        if (wires.Count == 0)
        {
            return new SumAnswer { Headline = most, Words = "At most {0} a metre is allowed, and no wire in the catalogue is that thick.", Figures = [most], Warnings = ["Split the lamps over two runs, or put a pack nearer."] };
        }

        Figure DropIn(WirePart wire) => Figure.From(
            Laws.DropInWire,
            $"drop in {wire.Name}",
            "V",
            Figure.Given("distance", distance.Metres, "m", "as asked", Certainty.Assumed),
            Figure.Given("ohms of a metre", wire.PerMetre.Ohms, "Ω", wire.Source, wire.Certainty),
            Figure.Given("current", current.Amperes, "A", "as asked", Certainty.Assumed));
        var gauge = wires.FirstOrDefault(w => w.Id.StartsWith("awg-", StringComparison.Ordinal)) ?? wires[0];
        return new SumAnswer
        {
            Headline = DropIn(gauge),
            Words = $"At most {{0}} a metre of one conductor. {gauge.Name} loses {{1}} there and back; the thinnest that will do is {wires[0].Name} with {{2}}.",
            Figures = [most, DropIn(gauge), DropIn(wires[0])],
            Steps = Catalogue.Parts.Wires.Where(w => StockGauges.Contains(w.Id)).Select(w => $"{w.Name}: {FigureText.Of(DropIn(w))}{(w.PerMetre.Ohms <= most.Value ? "" : ", too much")}.").ToItemList(),
        };
    }

    /// <summary>Which fuse protects a pack?</summary>
    /// <param name="supply">The pack.</param>
    /// <param name="load">Its current with all on.</param>
    /// <param name="wire">The thinnest wire behind it.</param>
    /// <param name="longest">Length of the longest pair.</param>
    /// <returns>The smallest resettable fuse that carries the load and is sure to open, or none.</returns>
    public static SumAnswer WhichFuse(Supply supply, Current load, WirePart wire, Length longest)
    {
        var part = Catalogue.FindSupply(Nowhere, supply.Part)!;
        var query = new ShortQuery(
            part, supply.Series, supply.Parallel, null, load.Amperes, Usual.SwitchOhms, Usual.SwitchOhms + (2 * longest.Metres * wire.PerMetre.Ohms),
            wire.CopperDiameter.Metres, Usual.RoomCelsius, Catalogue.Parts.Fuses);
        var bare = query.Answer();
        if (bare.Advice is not { Fuse: var fuse } advice)
        {
            return new SumAnswer
            {
                Headline = bare.Current,
                Words = "Without a fuse a short drives {0} and the wire in card would settle at {1}. No fuse in the catalogue both carries the load and is sure to open at the far end.",
                Figures = [bare.Current, bare.WireTemperature],
                Warnings = ["Use thicker or shorter wire, or fewer lamps on the pack; until then never leave it alone."],
            };
        }

        return new SumAnswer
        {
            Headline = Figure.Given("fuse", fuse.Hold.Amperes, "A", fuse.Source, fuse.Certainty),
            Words = $"A {fuse.Name} at the pack. Without it a short drives {{0}} and the wire in card would settle at {{1}}; with it the worst that can last is {{2}}, and the short itself gives off {{3}} at most.",
            Figures = [bare.Current, bare.WireTemperature, advice.WireTemperature, advice.HotSpot],
            Warnings = ["A fuse guards the wire; a short that is only warm can still scorch card. Take cells out while you work."],
        };
    }

    internal static CarryingQuery Carrying(Supply supply, SupplyPart part, LampPart lamp, Resistance ohms, Show show) => new(
        part, supply.Series, supply.Parallel, supply.ChargeLeft, Usual.HolderOhms + Usual.SwitchOhms, lamp, ohms.Ohms, lamp.Name,
        show.HoursPerDay.Hours, show.HoursPerDay.Hours * show.Days, show.DimShare, show.SpoiledShare, show.VisibleStep);

    /// <summary>The largest preferred value under a computed one, Ω.</summary>
    internal static double Below(double ohms)
    {
        // A twelfth of a decade is less than a fifth: the value under it is among those from half of it on.
        var value = PreferredValues.NextUp(PreferredValues.E12, Resistance.FromOhms(ohms / 2)).Ohms;
        while (PreferredValues.NextUp(PreferredValues.E12, Resistance.FromOhms(value * 1.01)).Ohms is var next && next < ohms * (1 - 1e-9))
        {
            value = next;
        }

        return value;
    }

    internal static double FreshVolts(SupplyPart part, int series) => (part.Curve.Count > 0 ? part.Curve[0].Open.Volts : part.NominalVoltage.Volts) * series;

    internal static IEnumerable<string> Late(SupplyPart part, int series, double lampVolts)
    {
        const double lateVoltsPerCell = 1.1;
        if (part.Kind == SupplyKind.Alkaline && part.NominalVoltage.Volts < 2 && lateVoltsPerCell * series < lampVolts)
        {
            yield return $"This lamp needs about {FigureText.Of(lampVolts, "V")}; {series} cells late in their life give {FigureText.Of(lateVoltsPerCell * series, "V")}. It will fade early: take one cell more and a new resistor.";
        }

        if (part.Kind == SupplyKind.LithiumCoin)
        {
            yield return "A coin cell is at ease with about 0.2 mA; use three AAA cells, and keep coin cells from children: swallowed, they burn within about two hours.";
        }
    }
}
