using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;
using Duskwright.Study.Sums;
using Duskwright.Study.Wiring;
using static Duskwright.Study.Questions.UsualFields;

namespace Duskwright.Study.Questions;

/// <summary>Lamps and their resistors.</summary>
internal static class LampQuestions
{
    // Below a quarter of the supply a resistor no longer evens out what lamps and cells do: common practice, no source.
    internal const double LeastResistorShare = 0.25;

    // One lamp does for three or four windows of one closed room, up to 80 mm of wall: common practice, no source.
    private const double WindowsPerLamp = 4;
    private const double MillimetresPerLamp = 80;

    // What data sheets of small LEDs allow backwards; from memory.
    private const double MostBackwardVolts = 5;

    private static readonly AskedChoice OtherLamp = LampChoice("other", "The other lamp", "led-0603-amber");
    private static readonly AskedNumber Rooms = new("rooms", "Rooms in the house", 3, 1, 40) { Whole = true };
    private static readonly AskedNumber LitRooms = new("lit", "Rooms that shall be lit", 2, 1, 40) { Whole = true };
    private static readonly AskedNumber Windows = new("windows", "Windows in the house", 9, 1, 200) { Whole = true };
    private static readonly AskedNumber Widest = new("row", "Longest row of windows in one room, mm", 70, 5, 2000);
    private static readonly AskedNumber TesterVolts = new("volts", "Volts of the tester", 4.5, 3, 9);
    private static readonly AskedNumber TesterOhms = new("tester", "Resistor in the tester, Ω", 1000, 470, 10_000);

    internal static ItemList<Question> All { get; } =
    [
        new("resistor", Theme.Lamps, "Which resistor goes in front of each lamp?", [Cell, Cells, OfLamp, Milliamperes], Resistor)
        {
            Put = (g, town) => new ChangeWiring(town.Wiring with { Led = g[OfLamp], LampCurrent = Current.FromMilliamperes(g[Milliamperes]), Resistor = null }, $"{g[Milliamperes]:0.##} mA in each lamp, {LampOf(g).Name}"),
        },
        new("share", Theme.Lamps, "Can several lamps share one resistor?", [Cell, Cells, OfLamp, Milliamperes, Lamps with { Usual = 8 }], Share),
        new("mix", Theme.Lamps, "May two colours of lamp have the same resistor?", [Cell, Cells, OfLamp, OtherLamp, Ohms], Mix),
        new("rooms", Theme.Lamps, "How many lamps does one house need?", [Rooms, LitRooms, Windows, Widest, Milliamperes], OfRooms)
        {
            Put = (g, town) => AddBuilding.Named(town, new Building { Name = "House from a question", Leds = LampsOf(g) }),
        },
        new("plus", Theme.Lamps, "Both leads look alike: which one is plus?", [TesterVolts, TesterOhms, OfLamp], Plus),
    ];

    private static SumAnswer Resistor(Given given)
    {
        var answer = QuickSums.WhichResistor(SupplyOf(given), LampOf(given), Current.FromMilliamperes(given[Milliamperes]));
        return answer with { Town = Value(answer) is { } ohms ? BenchTown.Of(SupplyOf(given), LampOf(given), ohms, 1, new Show()) : null };
    }

    // None where the lamp is made for its voltage, or no resistor makes it fit.
    private static Resistance? Value(SumAnswer answer) => answer.Headline is { Unit: "Ω", Value: > 0 } ohms ? Resistance.FromOhms(ohms.Value) : null;

    private static SumAnswer Share(Given given)
    {
        var (supply, lamp, count) = (SupplyOf(given), LampOf(given), (int)given[Lamps]);
        var volts = PartOf(supply).NominalVoltage.Volts * supply.Series;
        var single = QuickSums.WhichResistor(supply, lamp, Current.FromMilliamperes(given[Milliamperes]));
        if (lamp.Kind is LampKind.ReadyWired or LampKind.Filament || single.Headline.Unit != "Ω" || single.Headline.Value <= 0 || count == 1)
        {
            return single;
        }

        var together = PreferredValues.NextUp(PreferredValues.E12, Resistance.FromOhms(single.Headline.Value / count)).Ohms;
        var spread = lamp.VoltageSpread.Volts;
        var all = Enumerable.Range(0, count).Select(i => spread * ((2.0 * i / (count - 1)) - 1)).ToList();
        var amps = Behind(volts, together, lamp, all);

        // The one that takes least is first to be thought of as broken; taking it out is the mildest case.
        var without = Behind(volts, together, lamp, all[..^1]);
        var greedy = Figure.Given("current of the greediest", amps[0], "A", "the network of all lamps solved, their volts spread evenly over what one bag holds", Certainty.Computed);
        var lazy = Figure.Given("current of the laziest", amps[^1], "A", "the same", Certainty.Computed);
        var after = Figure.Given("current of the greediest when one has failed", without[0], "A", "the same with one lamp fewer", Certainty.Computed);
        var row = SeriesThatShare(volts, lamp);
        return new SumAnswer
        {
            Headline = single.Headline,
            Verdict = "No",
            Words = $"Behind one resistor of {{0}} for all {count}, the greediest lamp of a bag would take {{1}} and the laziest {{2}}; when one fails the greediest goes to {{3}}. Fit {count} resistors of {{4}}, one in each lead. {(row > 1 ? $"Only lamps one behind the other may share: {row} in a row on these volts." : "Only lamps one behind the other may share one, and these volts are not enough for two in a row.")}",
            Figures = [Figure.Given("resistor for all", together, "Ω", "the resistor of one over their number, next preferred value up, IEC 60063", Certainty.Computed), greedy, lazy, after, single.Headline],
            Warnings = [.. single.Warnings.Skip(1)],
        };
    }

    // Lamps in a row with a resistor that still has a quarter of the volts.
    private static int SeriesThatShare(double volts, LampPart lamp) => (int)Math.Floor(volts * (1 - LeastResistorShare) / LampLaws.Lit(lamp).VoltsAt(Usual.LampAmps));

    private static List<double> Behind(double volts, double ohms, LampPart lamp, List<double> shifts)
    {
        var lamps = shifts.Select((shift, i) => new LampElement($"lamp {i + 1}", 2, 0, LampLaws.Of(lamp with { ReferenceVoltage = Voltage.FromVolts(lamp.ReferenceVoltage.Volts + shift) }), 0)).ToList();
        return Behind(volts, ohms, lamps);
    }

    private static List<double> Behind(double volts, double ohms, List<LampElement> lamps)
    {
        var at = OperatingPoint.Solve(new Network(3, [new SourceElement("supply", 1, 0, volts, Network.LeastOhms), new ResistorElement("resistor", 1, 2, ohms), .. lamps])).NodeVolts[2];
        return [.. lamps.Select(l => l.Law.At(at, l.ResistorOhms).Amps)];
    }

    private static SumAnswer Mix(Given given)
    {
        var (supply, one, other, ohms) = (SupplyOf(given), LampOf(given), LampOf(given, OtherLamp), given[Ohms]);
        var volts = PartOf(supply).NominalVoltage.Volts * supply.Series;
        Figure Amps(LampPart lamp, double r, string name) => Figure.Given(name, LampLaws.Of(lamp).At(volts, r).Amps, "A", "the lamp's own curve at the nominal volts", Certainty.Computed);
        var (first, second) = (Amps(one, ohms, one.Name), Amps(other, ohms, other.Name));
        var apart = first.Value > 0 && second.Value > 0 ? Math.Max(first.Value / second.Value, second.Value / first.Value) : double.PositiveInfinity;
        var shared = Behind(volts, Math.Max(ohms / 2, Network.LeastOhms), [new LampElement("one", 2, 0, LampLaws.Of(one), 0), new LampElement("other", 2, 0, LampLaws.Of(other), 0)]);
        var weaker = Math.Min(shared[0], shared[1]) / Math.Max(Math.Max(shared[0], shared[1]), double.Epsilon);
        var match = first.Value > 0 ? QuickSums.WhichResistor(supply, other, Current.FromAmperes(first.Value)) : null;

        // A third more is seen side by side: a step of five in lightness, CIE 15.
        const double seen = 1.3;
        return new SumAnswer
        {
            Headline = match?.Headline ?? first,
            Verdict = apart > seen ? "No" : "Yes",
            Words = $"Each with its own {FigureText.Of(ohms, "Ω")}, the {one.Name} takes {{0}} and the {other.Name} {{1}}. {(match is null ? "" : $"For as much current as the first, the {other.Name} wants {{2}}.")} Behind one shared resistor {(weaker < 0.005 ? "the weaker of the two would stay dark" : "the weaker of the two would get {3} of the other's current")}.",
            Figures = [first, second, match?.Headline ?? first, Figure.Given("weaker over stronger behind one resistor", weaker, "share", "the network of both solved", Certainty.Computed)],
            Town = BenchTown.Of(supply, new Show(), BenchTown.House("First", one, OhmsOf(given), 1), BenchTown.House("Other", other, OhmsOf(given), 1)),
            Warnings = [.. QuickSums.Late(PartOf(supply), supply.Series, Math.Max(LampLaws.Lit(one).VoltsAt(0.001), LampLaws.Lit(other).VoltsAt(0.001)))],
        };
    }

    private static int LampsOf(Given given)
    {
        var lit = Math.Min(given[LitRooms], given[Rooms]);
        return (int)(lit * Math.Max(Math.Ceiling(given[Windows] / given[Rooms] / WindowsPerLamp), Math.Ceiling(given[Widest] / MillimetresPerLamp)));
    }

    private static SumAnswer OfRooms(Given given)
    {
        var (lit, lamps) = (Math.Min(given[LitRooms], given[Rooms]), LampsOf(given));
        var dark = given[Rooms] - lit;
        var count = Figure.Given("lamps", lamps, "", "lit rooms × one lamp, more where a room has over four windows or a row over 80 mm; common practice, no source", Certainty.Typical);
        var panes = Figure.Given("windows that glow", Math.Round(given[Windows] * lit / given[Rooms]), "", "windows spread evenly over the rooms", Certainty.Assumed);
        var spare = Figure.Given("spare", Math.Ceiling(lamps * Usual.SpareShare), "", "a tenth; common practice, no source", Certainty.Typical);
        return new SumAnswer
        {
            Headline = count,
            Words = $"Rooms that are lit count, not windows: {{0}} lamps make {{1}} windows glow and take {{2}} together. Have {{3}} to spare.{(dark > 0 ? $" Keep {(dark == 1 ? "the dark room" : $"the {dark:0} dark rooms")} dark with baffles: one lamp lights every storey that its light can reach." : "")}",
            Figures = [count, panes, Figure.Given("current of the house", lamps * given[Milliamperes] / 1000, "A", "lamps × current of each", Certainty.Computed), spare],
            Warnings = dark == 0 ? ["A house lit in every room looks like a lantern: one room in three is best left dark."] : [],
        };
    }

    private static SumAnswer Plus(Given given)
    {
        var lamp = LampOf(given);
        var lit = Figure.Given("current when it is the right way round", LampLaws.Of(lamp).At(given[TesterVolts], given[TesterOhms]).Amps, "A", "the lamp's own curve through the tester's resistor", Certainty.Computed);
        var back = Figure.Given("volts on the lamp when it is the wrong way round", given[TesterVolts], "V", "no current flows, so the resistor keeps nothing", Certainty.Computed);
        return new SumAnswer
        {
            Headline = lit,
            Verdict = lamp.Kind == LampKind.Filament ? "Either" : "Try it",
            Words = lamp.Kind == LampKind.Filament
                ? $"A {lamp.Name} lights either way round, with {{0}} through the tester; its leads need no mark."
                : "Touch the tester's plus to one lead and its minus to the other. Lit, with {0}: the lead on plus is plus. Dark: swap. The wrong way round puts {1} across the lamp and passes next to nothing, so a try does no harm.",
            Figures = [lit, back],
            Steps =
            [
                "Touch the tester to the two leads; swap if dark.",
                "Mark plus at both ends before threading: a red sleeve or a dot, always the same way.",
                "Write the house's code on a flag at the end that goes to the bank.",
                "Turn it round once more: it must stay dark.",
            ],
            Warnings = given[TesterVolts] > MostBackwardVolts ? ["LEDs are made for 5 V the wrong way round: with this tester touch and let go, or use three cells."] : lamp.Kind == LampKind.Flickering ? ["A flickering lamp holds a small circuit that a wrong way round can spoil: touch plus to its long leg only."] : [],
        };
    }
}
