using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Plan.Shapes;
using Duskwright.Study.Bench;
using Duskwright.Study.Figures;
using Duskwright.Study.Sums;
using static Duskwright.Study.Questions.UsualFields;

namespace Duskwright.Study.Questions;

/// <summary>Building a house, and what it looks like when it is lit.</summary>
internal static class HouseQuestions
{
    private static readonly Supply ThreeCells = new() { Id = "1", Part = "LR6", Series = 3 };

    // Narrower than this nobody can cut or see a gap while building.
    private const double ThinnestSeamMetres = 0.0001;

    private static readonly AskedChoice Shape = new("shape", "The house is like a", "cottage", StartingShape.All.Select(s => new Choice(Slug.Of(s.Name), s.Name.ToLowerInvariant())).ToItemList());
    private static readonly AskedNumber RoomLux = new("lux", "Light in the room where it is shown, lx", 30, 1, 1000);
    private static readonly AskedChoice Inside = new("inside", "Its walls inside are", "raw", [new("raw", "raw card"), new("white", "white"), new("black", "black"), new("foil", "foil")]);
    private static readonly AskedChoice PaneOf = new("pane", "The pane is", "clear", [new("clear", "clear"), new("frosted", "frosted"), new("tracing", "tracing paper")]);
    private static readonly AskedNumber Behind = new("mm", "From the lamp to the pane, mm", 8, 2, 200);
    private static readonly AskedChoice Aim = new("aim", "The lamp looks", "at", [new("at", "at the pane"), new("away", "at the back wall or the ceiling")]);
    private static readonly AskedChoice Stuff = new("stuff", "Glue, paint or filler", "pva", Drying.Rows.Select(r => new Choice(r.Id, r.Name)).ToItemList());

    internal static ItemList<Question> All { get; } =
    [
        new("order", Theme.Houses, "In which order do I build a lit house?", [Shape], Order) { InTown = "bench" },
        new("glow", Theme.Houses, "Why do the walls glow, and what helps?", [Shape, OfLamp, Milliamperes with { Usual = 5 }, RoomLux], Glow) { Also = "lantern leak light-proof", InTown = "night" },
        new("dot", Theme.Houses, "Why does the lamp show as a bright dot?", [Shape, PaneOf, Behind, Aim, Inside], Dot) { Also = "LED hot spot diffuse", InTown = "night" },
        new("dry", Theme.Houses, "How long must it dry?", [Stuff], Dry) { Also = "PVA glue paint roof", InTown = "bench" },
        new("record", Theme.Houses, "What do I write down before I close a house?", [], _ => Written()) { InTown = "book" },
    ];

    private static Building House(Given given) => StartingShape.All.Single(s => Slug.Of(s.Name) == given[Shape]).Building;

    private static SumAnswer Order(Given given)
    {
        var town = BenchTown.Of(ThreeCells, new Show(), House(given));
        var steps = BuildSteps.All(town, town.Buildings[0]);
        var work = Figure.Given("work", steps.Sum(s => s.Minutes) / 60.0, "h", "minutes of a practised hand added up; common practice, no source", Certainty.Typical);
        var dry = Figure.Given("from first cut to last test, drying counted", Longest(steps) / 60.0, "h", "the longest chain of steps and what must dry between them", Certainty.Computed);
        return new SumAnswer
        {
            Headline = work,
            Words = "{0} of work, but not under {1} from the first cut to the last test: what must dry takes longer than what must be done. A test stands before every step after which a lamp is out of reach.",
            Figures = [work, dry],
            Steps = steps.Select(s => $"{char.ToUpperInvariant(s.Words[0])}{s.Words[1..]}{(s.DryMinutes > 0 ? $"; dries {Hours(s.DryMinutes)}" : "")}{(s.Seals ? "; from here on nothing can be reached" : "")}.").ToItemList(),
            Warnings = steps.Select(s => s.Caution).OfType<string>().Distinct(StringComparer.Ordinal).ToItemList(),
            Town = town,
        };
    }

    /// <summary>Minutes from the first step to the end of the last, were every step begun as soon as what it waits for is dry.</summary>
    internal static double Longest(ItemList<BenchStep> steps)
    {
        var ends = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var step in steps)
        {
            ends[step.Key] = step.Minutes + step.After.Select(w => ends[w.Step] + w.DryMinutes).DefaultIfEmpty(0).Max();
        }

        return ends.Values.Max();
    }

    private static string Hours(double minutes) => FigureText.Of(minutes / 60, "h");

    // The shape with its lamp's current brought about by its resistor.
    private static Building Lit(Given given, Func<Room, Room> change)
    {
        var house = House(given);
        return house with { Storeys = house.Storeys.Select(s => s with { Rooms = s.Rooms.Select(change).ToItemList() }).ToItemList() };
    }

    private static SumAnswer Glow(Given given)
    {
        var resistor = QuickSums.WhichResistor(ThreeCells, LampOf(given), Current.FromMilliamperes(given[Milliamperes]));
        var third = QuickSums.WhichResistor(ThreeCells, LampOf(given), Current.FromMilliamperes(given[Milliamperes] / 3));
        var house = Lit(given, r => r) with { Led = given[OfLamp], Resistor = resistor.Headline is { Unit: "Ω", Value: > 0 } r ? ResistorChoice.Of(Resistance.FromOhms(r.Value)) : ResistorChoice.None };
        var town = BenchTown.Of(ThreeCells, new Show { RoomIlluminance = Illuminance.FromLux(given[RoomLux]) }, house);
        var leaks = TownStudy.Of(town).Leaks;
        var worst = leaks.SelectMany(l => l.Leaks).MaxBy(l => l.Coats.Value)!;
        var seam = leaks.MinBy(l => l.WidestSeam.Value)!.WidestSeam;
        return new SumAnswer
        {
            Headline = Figure.Given("coats of black inside", worst.Coats.Value, "", worst.Coats.Source, worst.Coats.Certainty),
            Words = $"The brightest {(worst.What == "walls" ? "wall" : worst.What)} gets {{0}} inside; {worst.Covering} wants {{1}} coats of matt black until nothing shows, then white over it where light is to bounce. {(seam.Value < ThinnestSeamMetres ? "Any open seam shows: close them all. " : "An open seam shows from {2} on. ")}A third of the current, with {{3}} instead of {{4}} at each lamp, is just seen as darker and spares coats.",
            Figures = [worst.InsideLux, worst.Coats, seam, third.Headline, resistor.Headline],
            Steps =
            [
                "Torch test: a lamp inside, the room dark, look from all sides before you paint outside.",
                "Black first, then white, in every room; corners, eaves and the foot of the walls twice.",
                "A black strip under the walls where they meet the board.",
                "Already sealed: dark coats outside, black under the roof skin, or a larger resistor at the bank.",
            ],
            Town = town,
        };
    }

    private static SumAnswer Dot(Given given)
    {
        var finish = given[Inside] switch { "white" => InteriorFinish.White, "black" => InteriorFinish.Black, "foil" => InteriorFinish.Foil, _ => InteriorFinish.Raw };
        var pane = given[PaneOf] switch { "frosted" => PaneMaterial.Frosted, "tracing" => PaneMaterial.Tracing, _ => PaneMaterial.Clear };
        Town With(PaneMaterial material, double behind, LampAim aim) => BenchTown.Of(ThreeCells, new Show(), Lit(given, r => r with
        {
            Finish = finish,
            Windows = r.Windows.Select(w => w with { Pane = new Pane { Material = material } }).ToItemList(),
            Lamps = r.Lamps.Select(l => l with { BehindPane = Length.FromMillimetres(behind), Aim = aim }).ToItemList(),
        }));
        static double Brightest(Town town) => TownStudy.Of(town).Panes.Max(p => p.HotSpotRatio);
        Figure Spot(string name, Town town) => Figure.Given(name, Brightest(town), "", "the room solved patch by patch, brightest part of the pane over its mean", Certainty.Computed);
        var town = With(pane, given[Behind], given[Aim] == "at" ? LampAim.AtPane : LampAim.Away);
        var (now, turned, papered) = (Spot("brightest spot over the mean", town), Spot("turned away, 20 mm behind", With(pane, 20, LampAim.Away)), Spot("and with tracing paper", With(PaneMaterial.Tracing, 20, LampAim.Away)));
        return new SumAnswer
        {
            Headline = now,
            Verdict = TownStudy.Of(town).Lamps.Any(l => l.DotShows) ? "Yes, a dot" : "No dot",
            Words = $"{(pane == PaneMaterial.Clear ? "Through a clear pane one sees the lamp itself. " : "")}The brightest spot of the worst pane is {{0}} times its mean. Turned to the back wall and 20 mm away it would be {{1}}; with tracing paper as well, {{2}}.",
            Figures = [now, turned, papered],
            Steps =
            [
                "Turn the lamp to the ceiling or the back wall, above or behind the line of sight.",
                "Keep 15 to 25 mm between lamp and pane.",
                "Frost the pane both ways, or put tracing paper behind it; a second layer costs about half the light.",
                "White walls inside throw the light about; black ones leave the dot.",
                "Lower the current: a threefold step is what the eye takes for darker.",
            ],
            Town = town,
        };
    }

    private static SumAnswer Dry(Given given)
    {
        var row = Drying.Rows.First(r => r.Id == given[Stuff]);
        return new SumAnswer
        {
            Headline = Figure.Given("until it may be closed up", row.ClosedMost, "h", "longer end of the usual range at about 20 °C; common practice, no source", Certainty.Typical),
            Verdict = row.Closed,
            Words = $"{row.Name}: do not touch for {row.Touch}; the careful next step after {row.Next}; closed up or at full strength after {row.Closed}. At about 20 °C in thin coats: cold or damp doubles it, and the label comes first.",
            Warnings =
            [
                "Power off, cells out, while anything is wet; test again when it is dry.",
                .. row.Id is "super" ? ["Super glue near panes hazes them: let it air for 24 h before you close. It bonds skin and gets hot on cotton."] : Array.Empty<string>(),
                .. row.Id is "enamel" or "resin" or "epoxy" or "contact" ? ["Air and gloves: mind the instructions on the pack."] : Array.Empty<string>(),
            ],
        };
    }

    private static SumAnswer Written() => new()
    {
        Headline = Figure.Given("things to write down", 11, "", "common practice, no source", Certainty.Typical),
        Words = "What nobody can see any more once the house is closed. The book's record sheet has a line for each, filled in with what the town knows.",
        Steps =
        [
            "The code of house, room and lamp, the same at both ends of its pair and on the plan.",
            "Each lamp: colour, kind, batch.",
            "Its resistor, and where it sits: at the lamp or at the bank.",
            "The pack and switch that feed it.",
            "Colour of its leads, and how plus is marked.",
            "Where its joints are, with a number on each.",
            "What it read at each test, with the volts of the pack beside the current.",
            "A photograph of the open house, of the underside and of the bank.",
            "Which glue, and the date.",
            "How it can be opened: lift-off roof, hidden seam, hatch.",
            "What you do not know.",
        ],
    };
}
