using Duskwright.Light.Perception;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;
using Duskwright.Study.Sums;
using Duskwright.Study.Wiring;
using static Duskwright.Study.Questions.UsualFields;

namespace Duskwright.Study.Questions;

/// <summary>Wire, holes, switches and fuses.</summary>
internal static class WireQuestions
{
    private static readonly AskedNumber Drop = new("drop", "Most that may be lost, V", 0.1, 0.01, 5);
    private static readonly AskedNumber Average = new("mm", "Average distance to the bank, mm", 350, 10, 10_000);
    private static readonly AskedNumber Pairs = new("pairs", "Pairs through the hole", 6, 1, 100) { Whole = true };
    private static readonly AskedNumber Outer = new("outer", "Each wire with its insulation, mm across", 0.22, 0.05, 5);
    private static readonly AskedNumber Joint = new("joint", "Fattest joint that must pass, mm (0 for none)", 0, 0, 10);
    private static readonly AskedNumber Groups = new("groups", "Groups with a switch of their own", 3, 1, 30) { Whole = true };

    internal static ItemList<Question> All { get; } =
    [
        new("street", Theme.Wires, "The end of the street looks dim: is it the wire?", [Cell, Cells, OfLamp, Ohms, Lamps with { Usual = 15 }, Wire with { Usual = "cu-0.10" }, Millimetres with { Usual = 1200 }], Street) { Also = "hair-thin drop far end", InTown = "power" },
        new("wire", Theme.Wires, "Which wire for so much current over such a distance?", [Millimetres with { Usual = 2000 }, AllMilliamperes, Drop], g => QuickSums.WhichWire(Length.FromMillimetres(g[Millimetres]), Current.FromMilliamperes(g[AllMilliamperes]), Voltage.FromVolts(g[Drop])))
        {
            InTown = "wires",
            Put = (g, town) => new ChangeWiring(town.Wiring with { Wire = Thinnest(g).Id }, $"Pairs of {Thinnest(g).Name}"),
        },
        new("metres", Theme.Wires, "How much wire do I need?", [Lamps with { Usual = 35, Label = "How many pairs" }, Average, Wire], Metres) { InTown = "book" },
        new("drill", Theme.Wires, "Which drill for the feed hole?", [Pairs, Outer, Joint], Drill) { Also = "hole pairs bundle", InTown = "wires" },
        new("switches", Theme.Wires, "How many wires for several switches?", [Groups, AllMilliamperes], Switches) { Also = "common minus groups hub", InTown = "power" },
        new("fuse", Theme.Wires, "Which fuse protects a pack?", [Cell, Cells, AllMilliamperes with { Usual = 100 }, Wire, Millimetres], g => QuickSums.WhichFuse(SupplyOf(g), Current.FromMilliamperes(g[AllMilliamperes]), WireOf(g), Length.FromMillimetres(g[Millimetres]))) { InTown = "power" },
    ];

    private static WirePart Thinnest(Given given)
    {
        var most = given[Drop] / (2 * given[Millimetres] / 1000 * given[AllMilliamperes] / 1000);
        return Catalogue.Parts.Wires.Where(w => w.PerMetre.Ohms <= most).DefaultIfEmpty(Catalogue.Parts.Wires.MinBy(w => w.PerMetre.Ohms)!).MaxBy(w => w.PerMetre.Ohms)!;
    }

    private static SumAnswer Street(Given given)
    {
        var (supply, lamp, count, metres) = (SupplyOf(given), LampOf(given), (int)given[Lamps], given[Millimetres] / 1000);
        Town Wired(string wire, double mm) => BenchTown.Of(supply, new Show(), BenchTown.House("Street", lamp, OhmsOf(given), count) with { Wire = wire, PairLength = Length.FromMillimetres(mm) });
        BuildingResult Far(string wire) => TownStudy.Of(Wired(wire, given[Millimetres])).Buildings[0];
        var (far, near) = (Far(given[Wire]), TownStudy.Of(Wired(given[Wire], 1)).Buildings[0]);
        Figure Share(string name, BuildingResult house) => Figure.Given(name, 1 - (house.Lamps[0].Current!.Value / near.Lamps[0].Current!.Value), "share", "both circuits solved, with the wire and with next to none", Certainty.Computed);
        var wire = WireOf(given);
        var there = Figure.Given("wire there and back", 2 * metres * wire.PerMetre.Ohms, "Ω", wire.Source, wire.Certainty);
        if (near.Lamps[0].Current!.Value < 1e-6)
        {
            return new SumAnswer { Headline = there, Verdict = "Not the wire", Words = "These cells do not light these lamps even beside the pack; the wire's {0} are not why.", Figures = [there] };
        }

        var lost = Share("current lost", far);
        var fainter = 100 - Lightness.OfShare(Math.Clamp(1 - lost.Value, 0, 1));
        var seen = fainter > new Show().VisibleStep;
        var thick = Far("cu-0.25");
        return new SumAnswer
        {
            Headline = lost,
            Verdict = seen ? "Yes, the wire" : "Not the wire",
            Words = $"{FigureText.Of(metres, "m")} of {wire.Name} have {{0}} there and back and take {{1}}: the lamps lose {{2}} of their current. {(seen ? "That is seen." : "That is not seen: look for a bad joint.")} Wire of 0.25 mm takes {{3}}.",
            Figures = [there, far.PairDrop!, lost, thick.PairDrop!],
            Town = Wired(given[Wire], given[Millimetres]),
        };
    }

    private static SumAnswer Metres(Given given)
    {
        var pair = Figure.From(
            Laws.PairByDistance,
            "a pair to cut",
            "m",
            Figure.Given("average distance", given[Average] / 1000, "m", "as asked", Certainty.Assumed),
            Figure.Given("detour", Usual.DetourFactor, "", "common practice, no source", Certainty.Typical),
            Figure.Given("slack", Usual.SlackMetres, "m", "common practice, no source", Certainty.Typical));
        var all = Figure.From(Laws.Product, "wire in all", "m", Figure.Given("conductors", 2 * given[Lamps], "", "two for each pair", Certainty.Computed), pair);
        var buy = Figure.Given("buy", 10 * Math.Ceiling(all.Value * (1 + Usual.SpareShare) / 10), "m", "a tenth to spare, whole tens of metres; common practice, no source", Certainty.Typical);
        return new SumAnswer
        {
            Headline = all,
            Words = "Each pair is cut at {0}; {1} in all, so buy {2}. The main pair between bank and pack comes on top.",
            Figures = [pair, all, buy],
        };
    }

    private static SumAnswer Drill(Given given)
    {
        var wires = Enumerable.Repeat(given[Outer], (int)given[Pairs]).ToList();
        var drill = HoleDrill.Millimetres(wires, given[Joint]);
        var bundle = Figure.Given("bundle", HoleDrill.BundleMillimetres(wires) / 1000, "m", "√(2 × wires) × outer diameter: wires fill half of the hole; common practice, no source", Certainty.Typical);
        return new SumAnswer
        {
            Headline = Figure.Given("drill", drill / 1000, "m", "bundle + 0.5 mm, never under the fattest joint + 1 mm, next half millimetre up; common practice, no source", Certainty.Typical),
            Words = $"{2 * given[Pairs]:0} wires make a bundle of {{0}}.{(given[Joint] > 0 ? $" A joint of {FigureText.Of(given[Joint] / 1000, "m")} must pass as well." : " Make the joints when the pairs are through.")}",
            Figures = [bundle],
            Warnings = ["Look for wires and timbers under the board before drilling; eye protection, and a scrap of wood below."],
        };
    }

    private static SumAnswer Switches(Given given)
    {
        var groups = (int)given[Groups];
        var wires = Figure.Given("wires", groups + 1, "", "one common minus and a plus for each group", Certainty.Computed);
        var each = Figure.Given("current of a switch, if shared evenly", given[AllMilliamperes] / 1000 / groups, "A", "all lamps together ÷ groups", Certainty.Computed);
        var (low, high) = (2 * given[AllMilliamperes] / 1000, 4 * given[AllMilliamperes] / 1000);
        return new SumAnswer
        {
            Headline = wires,
            Words = $"{{0}} wires: one minus for all and a plus for each of {groups} groups; {{1}} with one to spare. Switches sit in the plus wires. One fuse before the first switch, of {FigureText.Of(low, "A")} to {FigureText.Of(high, "A")}.",
            Figures = [wires, Figure.Given("with one to spare", groups + 2, "", "common practice, no source", Certainty.Typical), each],
            Steps = ["Write beside each switch what it lights and how many milliamperes it should show.", "A lamp that two switches must light is a group of its own."],
            Warnings = ["Never join two groups behind their switches: each would feed the other."],
        };
    }
}
