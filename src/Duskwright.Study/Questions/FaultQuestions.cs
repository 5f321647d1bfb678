using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;
using Duskwright.Study.Mending;
using Duskwright.Study.Sums;
using static Duskwright.Study.Questions.UsualFields;

namespace Duskwright.Study.Questions;

/// <summary>Something is dark, hot, or died.</summary>
internal static class FaultQuestions
{
    private static readonly AskedNumber InHouse = new("lamps", "Lamps in the house", 5, 2, 20) { Whole = true };
    private static readonly AskedNumber InRow = new("lamps", "Lamps that went out together", 20, 2, 500) { Whole = true };
    private static readonly AskedChoice Reads = new("reads", "A meter at its pair says", "none", [new("none", "I own no meter"), new("open", "volts are there, no current flows"), new("short", "the volts fall as it is joined")]);
    private static readonly AskedNumber HouseLamps = new("lamps", "Lamps in the house", 3, 1, 20) { Whole = true };

    internal static ItemList<Question> All { get; } =
    [
        new("one-dark", Theme.Faults, "One lamp of a house is dark, its roof still off: what first?", [Cell, Cells, OfLamp, Ohms, InHouse], OneDark) { InTown = "bench" },
        new("row-dark", Theme.Faults, "A whole row went out at once: where do I look?", [Cell, Cells, OfLamp, Ohms, InRow], RowDark) { Also = "street dark group", InTown = "bench" },
        new("hot", Theme.Faults, "The pack is hot and nothing lights: what now?", [Cell, Cells, AllMilliamperes with { Usual = 100 }, Wire, Millimetres], Hot) { Also = "short circuit smell", InTown = "power" },
        new("sealed", Theme.Faults, "A house died after it was glued in: can it be saved?", [Cell, Cells, OfLamp, Ohms, HouseLamps, Reads], Sealed) { Also = "dead dark repair", InTown = "bench" },
    ];

    private static SumAnswer OneDark(Given given)
    {
        var town = BenchTown.Of(SupplyOf(given), new Show(), BenchTown.House("Inn", LampOf(given), OhmsOf(given), (int)given[InHouse]) with { State = BuildingState.Shell });
        var study = TownStudy.Of(town);
        var pack = study.Packs[0];
        if (pack.Load is null || study.Lamps[0].Current!.Value < 1e-5)
        {
            return Unlit(study.Lamps[0].Part);
        }

        var answer = study.WhatBroke(new FaultQuestion(BenchTown.Pack, study.Lamps.Select((l, i) => (l, i)).ToDictionary(l => (l.l.Building, l.l.Name), l => l.i == 0 ? Seen.Dark : Seen.Lit), null));
        var less = Figure.Given("current of each lamp", study.Lamps[0].Current!.Value, "A", "the circuit solved", Certainty.Computed);
        return new SumAnswer
        {
            Headline = Figure.Given("most likely", answer.Suspects[0].Share, "share", "every single fault of such a house, weighed by what was seen", Certainty.Computed),
            Verdict = "Its own branch",
            Words = "The others are lit, so pair, switch and pack are sound: only that lamp's branch is left, and the pack is short of its {0} and no more. Touch a tester (4.5 V through 1 kΩ) to the ends of its leads, swap the leads, then touch the LED itself.",
            Figures = [less],
            Steps = Told(answer.Suspects).Select(s => $"{Likely(s)}: {string.Join("; or ", s.Words)}. {s.Remedy}").ToItemList(),
            Warnings = ["Cells out before you solder; solder away from card."],
            Town = town,
        };
    }

    private static SumAnswer RowDark(Given given)
    {
        var town = BenchTown.Of(SupplyOf(given), LampOf(given), OhmsOf(given), (int)given[InRow], new Show());
        var pack = TownStudy.Of(town).Packs[0];
        var volts = pack.Volts!;
        return new SumAnswer
        {
            Headline = volts,
            Verdict = "Something common",
            Words = $"{given[InRow]:0} lamps do not fail together: it is the cells, the switch, the fuse, the feed or a screw at the bank. With all lit the pack should read {{0}} and give {{1}}. The first place that does not have those volts lies just behind the fault.",
            Figures = [volts, pack.Load!],
            Steps =
            [
                $"At the cells, town switched on: {FigureText.Of(volts)} or near it. Much less: change all cells together.",
                "Behind the fuse, against minus: the same volts. None: the fuse.",
                "Behind the switch: the same. None: the switch, or a wire on it.",
                "At the bank's screws, plus against minus: the same. None: the feed between. All there: the common minus of the row.",
                "No meter: carry a tester lamp with its resistor along the same way; where it goes dark, the fault lies just before.",
            ],
            Town = town,
        };
    }

    private static SumAnswer Hot(Given given)
    {
        var fuse = QuickSums.WhichFuse(SupplyOf(given), Current.FromMilliamperes(given[AllMilliamperes]), WireOf(given), Length.FromMillimetres(given[Millimetres]));
        var (current, heat) = (fuse.Figures[0], fuse.Figures[1]);
        return new SumAnswer
        {
            Headline = current,
            Verdict = "Lift a cell out now",
            Words = $"It is a short: {{0}} can flow, and the wire in the card would settle at {{1}}. {(fuse.Headline.Name == "fuse" ? "A fuse of {2} would have opened." : "No fuse of the catalogue suits this wire and load: use thicker or shorter wire.")}",
            Figures = fuse.Headline.Name == "fuse" ? [current, heat, fuse.Headline] : [current, heat],
            Steps =
            [
                "Lift one cell out; do not touch hot wire. Let it cool, and look for browned card.",
                "Cells out: measure ohms between plus and minus behind the switch, town off the pack.",
                "Undo the pairs one by one until the ohms rise: the last one undone holds the short.",
                "No meter: join the pairs one by one to a fresh pack through 1 kΩ and a lamp in the plus wire; the pair that makes that lamp bright holds the short.",
                "Look there for foil, a bare sleeve, glue still wet, a nail.",
                "Fit the fuse before the cells go back.",
            ],
            Warnings = ["Swollen, leaking or lithium cells: leave them alone, out of doors, and follow their maker's advice.", "This guides, it does not certify."],
        };
    }

    private static SumAnswer Sealed(Given given)
    {
        var town = BenchTown.Of(SupplyOf(given), new Show(), BenchTown.House("House", LampOf(given), OhmsOf(given), (int)given[HouseLamps]) with { State = BuildingState.Fixed, PairLength = Length.FromMillimetres(500) });
        var study = TownStudy.Of(town);
        if (study.Lamps[0].Current!.Value < 1e-5)
        {
            return Unlit(study.Lamps[0].Part);
        }

        var house = study.Buildings[0];
        var volts = study.Packs[0].Volts!;
        var amps = given[Reads] switch { "open" => 0.0, "short" => study.Packs[0].ShortCircuit!.Current.Value, _ => (double?)null };
        var answer = study.WhatBroke(new FaultQuestion(BenchTown.Pack, study.Lamps.ToDictionary(l => (l.Building, l.Name), _ => Seen.Dark), amps));
        return new SumAnswer
        {
            Headline = house.Current!,
            Verdict = given[Reads] == "short" ? "Take it off now" : "Often",
            Words = given[Reads] switch
            {
                "open" => "Volts and no current: something is open, in the pair or inside. Sound, it would take {0} at {1}.",
                "short" => "The volts fall as it is joined: its wires touch. Take its pair off the bank at once and leave it off until that is mended: sound, it would take {0} at {1}.",
                _ => "Switch off and undo its two ends at the bank. Touch a tester to them, plus to plus: 4.5 V through 1 kΩ, so that even a short passes only a few milliamperes. A faint glow: the joint at the bank was bad. Dark: open, or its two wires touch; put a lamp of your own across the same two ends: if it stays dark as well, they touch, and the pair stays off the bank. Sound, the house takes {0} at {1}.",
            },
            Figures = [house.Current!, volts],
            Steps =
            [
                .. Told(answer.Suspects).Select(s => $"{Likely(s)}: {string.Join("; or ", s.Words)}."),
                "Read the house's record: where are its joints? Those under the board can still be made anew.",
                "Ways round, cheapest first: a spare lead; the joint under the board; a new lamp from below; a light-guide strand from below; a cut along a hidden seam.",
            ],
            Warnings = ["Never touch a pair that may be shorted to a bare pack: always a resistor in the way. Cells out while you work."],
            Town = town,
        };
    }

    // What is less likely than one in a hundred is not worth a maker's time.
    private static IEnumerable<FaultSuspect> Told(ItemList<FaultSuspect> suspects) => suspects.Where(s => s.Share >= 0.01).Take(4);

    private static string Likely(FaultSuspect suspect) => suspect.Share switch { >= 0.5 => "Most likely", >= 0.1 => "Possible", _ => "Hardly" };

    private static SumAnswer Unlit(LampPart lamp) => new()
    {
        Headline = Figure.Given("volts it needs", Wiring.LampLaws.Lit(lamp).VoltsAt(Wiring.Usual.LampAmps), "V", lamp.Source, lamp.Certainty),
        Verdict = "Not a fault",
        Words = $"These cells cannot light a {lamp.Name} at all, which needs {{0}}: no joint is to blame. Take more cells or another lamp.",
        Figures = [Figure.Given("volts it needs", Wiring.LampLaws.Lit(lamp).VoltsAt(Wiring.Usual.LampAmps), "V", lamp.Source, lamp.Certainty)],
    };
}
