using Duskwright.Circuits.Supplies;
using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;
using Duskwright.Study.Sums;
using Duskwright.Study.Wiring;
using static Duskwright.Study.Questions.UsualFields;

namespace Duskwright.Study.Questions;

/// <summary>Cells, packs, power banks and adaptors.</summary>
internal static class PackQuestions
{
    // A cell out of its wrapper: common practice, no source.
    private const double FreshCellVolts = 1.55;

    // Inside a power bank are 3.7 V cells; about 85 % comes out at 5 V: common practice, no source.
    private const double BankCellVolts = 3.7;
    private const double BankEfficiency = 0.85;
    private const double BankVolts = 5;

    // A 20 mm coin cell is at ease with 0.2 mA and has 10 to 140 Ω inside as it ages: common practice, no source.
    private const double CoinAtEaseAmps = 0.0002;
    private const double CoinNewOhms = 10;
    private const double CoinOldOhms = 140;

    private static readonly AskedNumber CellVolts = new("volts", "Volts of each cell by now", 1.4, 0.8, 1.6);
    private static readonly AskedNumber TwoCells = Cells with { Usual = 2 };
    private static readonly AskedChoice Fading = LampChoice("lamp", "The lamp that dies down", "led-0603-warm-white");
    private static readonly AskedNumber FadingOhms = new("ohm", "Resistor at it, Ω", 47, 0, 100_000);
    private static readonly AskedChoice Lasting = LampChoice("other", "The lamp that carries on", "led-0603-red");
    private static readonly AskedNumber LastingOhms = new("other-ohm", "Resistor at that, Ω", 560, 0, 100_000);

    // A few dozen milliamperes are usual and banks differ: twice the usual 50 mA keeps any awake. Common practice, no source.
    private static readonly AskedNumber BankLeast = new("sleeps", "The bank sleeps under, mA", 100, 10, 500);
    private static readonly AskedNumber BankCharge = new("ah", "Its charge as printed, Ah", 10, 1, 50);
    private static readonly AskedNumber AdaptorVolts = new("volts", "Volts printed after OUTPUT", 12, 1, 400);
    private static readonly AskedChoice AdaptorKind = new("kind", "What stands beside them", "steady", [new("steady", "DC, regulated"), new("rough", "DC, not regulated"), new("ac", "AC")]);
    private static readonly AskedNumber More = new("more", "Lamps to come", 9, 1, 500) { Whole = true };
    private static readonly AskedNumber FewLamps = Lamps with { Usual = 3 };

    internal static ItemList<Question> All { get; } =
    [
        new("lamps", Theme.Packs, "How many lamps can hang on one pack?", [Cell, Cells, OfLamp, Ohms, Hours, Days], HowMany) { InTown = "power" },
        new("hours", Theme.Packs, "How long do my lamps last?", [Cell, Cells, OfLamp, Ohms, Lamps, Hours], g => QuickSums.HowLong(SupplyOf(g), LampOf(g), OhmsOf(g), (int)g[Lamps], new Show { HoursPerDay = Duration.FromHours(g[Hours]) })) { InTown = "power" },
        new("fair", Theme.Packs, "Do the cells last the whole show, day after day?", [Cell, Cells, OfLamp, Ohms, Lamps with { Usual = 24 }, Hours with { Usual = 7 }, Days with { Usual = 2 }], Fair) { Also = "weekend exhibition", InTown = "power" },
        new("fades", Theme.Packs, "Why do white lamps die down while red ones carry on?", [Cell, TwoCells, Fading, FadingOhms, Lasting, LastingOhms, CellVolts], Fades),
        new("bank", Theme.Packs, "Why does my power bank put the town out?", [OfLamp, Ohms with { Usual = 1000 }, Lamps with { Usual = 18 }, BankLeast, BankCharge], Bank) { Also = "village sleeps USB 5 V goes off" },
        new("adaptor", Theme.Packs, "Can I use an old plug-in adaptor?", [AdaptorVolts, AdaptorKind, OfLamp, Milliamperes], Adaptor) { Also = "12 V transformer plug mains", Refuse = g => g[AdaptorVolts] > SupplyChecks.TouchableVolts ? SupplyChecks.Mains("", $"The adaptor gives {g[AdaptorVolts]:0.#} V") : null },
        new("rechargeable", Theme.Packs, "May I use rechargeable cells?", [Cells, OfLamp, Ohms, Milliamperes], Rechargeable) { Also = "NiMH" },
        new("coin", Theme.Packs, "Is a coin cell enough for a cottage?", [FewLamps, OfLamp, Milliamperes], Coin) { Also = "button CR2032" },
        new("grow", Theme.Packs, "What happens when I add houses to a pack?", [Cell, Cells, OfLamp, Ohms, Lamps with { Usual = 40 }, More, Hours], Grow)
        {
            InTown = "wires#grow",
            Put = (g, town) => AddBuilding.Named(town, new Building { Name = "Houses to come", Leds = (int)g[More], Led = g[OfLamp], Resistor = g[Ohms] > 0 ? ResistorChoice.Of(OhmsOf(g)) : ResistorChoice.None }),
        },
    ];

    private static SumAnswer HowMany(Given given)
    {
        var answer = QuickSums.HowManyLamps(SupplyOf(given), LampOf(given), OhmsOf(given), ShowOf(given));
        string Row(int lamps) => QuickSums.HowLong(SupplyOf(given), LampOf(given), OhmsOf(given), lamps, ShowOf(given)) is { Headline: { Unit: "h" } hours }
            ? $"{lamps} lamps: half light after {FigureText.Of(hours)}."
            : $"{lamps} lamps: no fading to speak of.";
        return answer with { Steps = [Row(10), Row(30), Row(60), Row(90), Row(120)] };
    }

    private static SumAnswer Fair(Given given)
    {
        var show = ShowOf(given);
        var answer = QuickSums.HowLong(SupplyOf(given), LampOf(given), OhmsOf(given), (int)given[Lamps], show);
        var pack = TownStudy.Of(answer.Town!).Packs[0];
        var needed = Figure.Given("hours of the show", show.HoursPerDay.Hours * show.Days, "h", "hours a day × days", Certainty.Computed);
        if (pack.HoursToDim is not { } half)
        {
            return answer with { Verdict = "Yes" };
        }

        var fade = pack.Fade!;
        double Left(int day) => fade.At(fade.Amperes, day * show.HoursPerDay.Hours) / fade.Amperes[0];
        return answer with
        {
            Verdict = half.Value >= needed.Value ? "Yes" : "No",
            Words = $"{{0}} in all on fresh cells; {{1}} are needed, half light comes after {{2}}. {(half.Value >= needed.Value ? "Change overnight only for filming." : "Change the cells in between, take a size larger, or share the lamps over two packs.")}",
            Figures = [pack.Load!, needed, half],
            Steps = Enumerable.Range(1, Math.Min(show.Days, 7)).Select(day => $"After day {day}: {FigureText.Of(Left(day), "share")} of the first current.").ToItemList(),
        };
    }

    private static SumAnswer Fades(Given given)
    {
        var (series, now) = ((int)given[TwoCells], given[CellVolts]);
        Figure Left(LampPart lamp, double ohms) => Figure.Given(
            $"{lamp.Name} has left",
            LampLaws.Of(lamp).At(now * series, ohms).Amps / LampLaws.Of(lamp).At(FreshCellVolts * series, ohms).Amps,
            "share",
            $"its own curve at {now:0.##} V a cell over that at {FreshCellVolts:0.##} V",
            Certainty.Computed);
        var (one, other) = (LampOf(given, Fading), LampOf(given, Lasting));
        var (fading, lasting) = (Left(one, given[FadingOhms]), Left(other, given[LastingOhms]));
        var needs = Figure.Given("volts it needs", LampLaws.Lit(one).VoltsAt(Usual.LampAmps), "V", one.Source, one.Certainty);
        var cure = new Supply { Id = "1", Part = given[Cell], Series = series + 1 };
        Figure Anew(LampPart lamp) => QuickSums.WhichResistor(cure, lamp, Current.FromAmperes(Usual.LampAmps)).Headline;
        return new SumAnswer
        {
            Headline = fading,
            Words = $"At {FigureText.Of(now, "V")} a cell the {one.Name} has {{0}} of its first current and the {other.Name} {{1}}. The first needs {{2}}, the second {{3}}, and {series} cells give {{4}} by then. Cure: one cell more and new resistors, {{5}} and {{6}}, or 5 V.",
            Figures =
            [
                fading, lasting, needs, Figure.Given("volts it needs", LampLaws.Lit(other).VoltsAt(Usual.LampAmps), "V", other.Source, other.Certainty),
                Figure.Given("the cells give", now * series, "V", "volts of a cell × cells", Certainty.Computed), Anew(one), Anew(other),
            ],
        };
    }

    private static SumAnswer Bank(Given given)
    {
        var (lamp, count) = (LampOf(given), (int)given[Lamps]);
        var load = Figure.Given("the lamps take", count * LampLaws.Of(lamp).At(BankVolts, given[Ohms]).Amps, "A", "the lamp's own curve at 5 V × lamps", Certainty.Computed);
        var least = given[BankLeast] / 1000;
        var bank = new PowerBank(BankVolts, least, Charge.FromAmpereHours(given[BankCharge] * BankCellVolts * BankEfficiency / BankVolts).Coulombs);
        double HoursWith(double ohms) => bank.With(load.Value, ohms).Seconds / Duration.FromHours(1).Seconds;
        var hours = Figure.Given("hours without", HoursWith(double.PositiveInfinity), "h", "printed charge × 3.7 V × 85 % ÷ 5 V ÷ current; common practice, no source", Certainty.Typical);
        if (!bank.MaySleep(load.Value))
        {
            return new SumAnswer { Headline = load, Verdict = "Not the load", Words = $"The lamps take {{0}}, more than the {FigureText.Of(least, "A")} it sleeps under. It lasts about {{1}}; look at the lead and the plug, or try another bank.", Figures = [load, hours] };
        }

        // The largest preferred value that still keeps the bank awake.
        var ohms = QuickSums.Below(bank.MostBleedOhms(load.Value));
        var bleed = Figure.Given("bleed resistor", ohms, "Ω", "5 V ÷ the current that is missing, a preferred value below, IEC 60063", Certainty.Computed);
        var verdict = bank.With(load.Value, ohms);
        var (extra, heat) = (verdict.Amps - load.Value, verdict.BleedWatts);
        return new SumAnswer
        {
            Headline = bleed,
            Words = $"The lamps take only {{0}}, and the bank goes to sleep under {FigureText.Of(least, "A")}. A bank with a mode for small loads, a plain adaptor or cells cure it; or a resistor of {{1}} from plus to minus adds {{2}} and warms by {{3}}: take one made for {(heat < 0.2 ? "half a watt" : heat < 0.45 ? "1 W" : "twice that")}, away from card. The bank then lasts about {{4}} instead of {{5}}.",
            Figures =
            [
                load, bleed, Figure.Given("it adds", extra, "A", "5 V ÷ resistor", Certainty.Computed), Figure.Given("heat in it", heat, "W", "volts × current", Certainty.Computed),
                Figure.Given("hours with it", HoursWith(ohms), "h", "the same charge over both currents", Certainty.Computed), hours,
            ],
            Warnings = ["It gets warm for as long as the town is lit: fix it in free air, not in the board."],
        };
    }

    private static SumAnswer Adaptor(Given given)
    {
        var (volts, lamp, amps) = (given[AdaptorVolts], LampOf(given), given[Milliamperes] / 1000);
        var gives = Figure.Given("the adaptor gives", volts, "V", "as printed on it", Certainty.Assumed);
        if (given[AdaptorKind] == "ac")
        {
            return new SumAnswer { Headline = gives, Verdict = "No", Words = "AC turns its plus and minus round fifty or sixty times a second: an LED would flicker and be pushed the wrong way by more than {0}. Take one that says DC.", Figures = [gives], Warnings = Guarded };
        }

        // Without regulation a lightly loaded adaptor gives up to about two fifths more than is printed: common practice, no source.
        var most = given[AdaptorKind] == "rough" ? volts * 1.4 : volts;
        var law = LampLaws.Lit(lamp);
        List<string> ways = [];
        Figure? first = null;
        for (var row = 1; row <= 20 && row * law.VoltsAt(amps) <= volts * (1 - LampQuestions.LeastResistorShare); row++)
        {
            var ohms = PreferredValues.NextUp(PreferredValues.E12, Resistance.FromOhms((most - (row * law.VoltsAt(amps))) / amps)).Ohms;
            var flows = law.At(most / row, ohms / row).Amps;
            first ??= Figure.Given("resistor for one lamp", ohms, "Ω", "Ohm's law, next preferred value up, IEC 60063", Certainty.Computed);
            ways.Add($"{(row == 1 ? "One lamp" : $"{row} lamps in a row")} with {FigureText.Of(ohms, "Ω")}: {FigureText.Of(flows, "A")}, the resistor warms by {FigureText.Of(flows * flows * ohms, "W")}.");
        }

        return first is null
            ? new SumAnswer { Headline = gives, Verdict = "No", Words = $"{{0}} is too little for a {lamp.Name} and its resistor.", Figures = [gives], Warnings = Guarded }
            : new SumAnswer
            {
                Headline = first,
                Verdict = "Yes, with a resistor",
                Words = $"{{0}} drive a {lamp.Name} through {{1}}, never straight on.{(most > volts ? " An adaptor that is not regulated gives up to two fifths more while it carries little: the resistors below are for that." : "")} Several lamps in a row may share one resistor.",
                Figures = [gives, first],
                Steps = ways.ToItemList(),
                Warnings = Guarded,
            };
    }

    private static ItemList<string> Guarded { get; } =
    [
        "Only a sealed, certified adaptor (for example IEC 61558, IEC 62368-1), never opened: check DC, polarity and volts with a meter before the first lamp.",
        "Fit a fuse behind it: it drives far more into a short than cells of its size.",
        "This guides, it does not certify; mains wiring belongs to an electrician.",
    ];

    private static SumAnswer Rechargeable(Given given)
    {
        var (lamp, ohms, series) = (LampOf(given), given[Ohms], (int)given[Cells]);
        Supply Of(string part, int cells) => new() { Id = "1", Part = part, Series = cells };
        Figure Takes(string part, int cells, string name) => Figure.Given(name, LampLaws.Of(lamp).At(PartOf(Of(part, cells)).NominalVoltage.Volts * cells, ohms).Amps, "A", "the lamp's own curve at the nominal volts", Certainty.Computed);
        var (ordinary, charged) = (Takes("LR6", series, "on alkaline cells"), Takes("HR6", series, "on rechargeable cells"));
        SumAnswer Anew(int cells) => QuickSums.WhichResistor(Of("HR6", cells), lamp, Current.FromMilliamperes(given[Milliamperes]));
        string Row(int cells) => Anew(cells) is { Headline: { Unit: "Ω" } r } answer && r.Value > 0 ? $"{cells} rechargeable cells with {FigureText.Of(r)}: {FigureText.Of(answer.Figures[2])}." : $"{cells} rechargeable cells: too little for this lamp.";
        return new SumAnswer
        {
            Headline = charged,
            Verdict = "Yes, with other resistors",
            Words = $"{series} rechargeable cells give {{0}} where alkaline ones give {{1}}: with {FigureText.Of(ohms, "Ω")} each lamp takes {{2}} instead of {{3}}, but holds it nearly to the end.",
            Figures =
            [
                Figure.Given("rechargeable cells give", PartOf(Of("HR6", series)).NominalVoltage.Volts * series, "V", PartOf(Of("HR6", series)).Source, Certainty.Typical),
                Figure.Given("alkaline cells give", PartOf(Of("LR6", series)).NominalVoltage.Volts * series, "V", PartOf(Of("LR6", series)).Source, Certainty.Typical),
                charged, ordinary,
            ],
            Steps = [Row(series), Row(series + 1)],
            Warnings = ["Never mix them with other cells, old with new, or full with empty, in one holder.", "They push far more current into a short than alkaline cells: a fuse is a must."],
        };
    }

    private static SumAnswer Coin(Given given)
    {
        var amps = given[FewLamps] * given[Milliamperes] / 1000;
        var load = Figure.Given("the lamps take", amps, "A", "lamps × current of each", Certainty.Computed);
        Figure Sags(double ohms, string when) => Figure.Given($"it sags when {when} by", amps * ohms, "V", $"current × {ohms:0} Ω inside; common practice, no source", Certainty.Typical);
        var cells = new Supply { Id = "1", Part = "LR03", Series = 3 };
        var instead = QuickSums.WhichResistor(cells, LampOf(given), Current.FromMilliamperes(given[Milliamperes]));
        return new SumAnswer
        {
            Headline = load,
            Verdict = amps <= CoinAtEaseAmps ? "Just" : "No",
            Words = $"{{0}} is {{1}} times what a 20 mm coin cell is at ease with. Its volts sag by {{2}} when it is new and {{3}} when it has aged, and a white lamp dims within hours. Three AAA cells with {{4}} at each lamp do it.",
            Figures = [load, Figure.Given("times", amps / CoinAtEaseAmps, "", "current ÷ 0.2 mA; common practice, no source", Certainty.Typical), Sags(CoinNewOhms, "new"), Sags(CoinOldOhms, "old"), instead.Headline],
            Warnings = ["Keep coin cells out of children's reach, behind a screwed lid: swallowed, one burns within about two hours; emergency help at once (IEC 60086-4)."],
        };
    }

    private static SumAnswer Grow(Given given)
    {
        var (supply, lamp, now, then) = (SupplyOf(given), LampOf(given), (int)given[Lamps], (int)(given[Lamps] + given[More]));
        SumAnswer Of(int lamps) => QuickSums.HowLong(supply, lamp, OhmsOf(given), lamps, new Show { HoursPerDay = Duration.FromHours(given[Hours]) });
        Figure Load(int lamps, string name) => Figure.Given(name, lamps * LampLaws.Of(lamp).At(PartOf(supply).NominalVoltage.Volts * supply.Series, given[Ohms]).Amps, "A", "the lamp's own curve at the nominal volts × lamps", Certainty.Computed);
        var (before, after) = (Of(now), Of(then));
        var fades = before.Headline.Unit == "h" && after.Headline.Unit == "h";
        return new SumAnswer
        {
            Headline = fades ? after.Headline : Load(then, "current then"),
            Verdict = fades && after.Headline.Value < given[Hours] ? "Too short" : "It lasts",
            Words = fades ? $"At the nominal volts the pack carries {{1}} instead of {{0}}; the show is {FigureText.Of(given[Hours], "h")}, and half light comes after {{3}} instead of {{2}}. Keep a terminal and a switch way to spare, reckon the main pair anew with all on, and buy white lamps of the same batch or give the new ones a street of their own."
                : "The pack carries {1} instead of {0} and does not fade.",
            Figures = fades ? [Load(now, "current now"), Load(then, "current then"), before.Headline, after.Headline] : [Load(now, "current now"), Load(then, "current then")],
            Town = after.Town,
            Warnings = after.Warnings,
        };
    }
}
