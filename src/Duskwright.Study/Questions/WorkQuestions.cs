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

/// <summary>Hours and money.</summary>
internal static class WorkQuestions
{
    private static readonly AskedNumber Houses = new("houses", "How many houses", 10, 1, 300) { Whole = true };
    private static readonly AskedNumber LampsEach = new("lamps", "Lamps in each", 2, 1, 20) { Whole = true };
    private static readonly AskedNumber WindowsEach = new("windows", "Windows in each", 5, 0, 60) { Whole = true };
    private static readonly AskedNumber RoomsEach = new("rooms", "Rooms in each", 2, 1, 20) { Whole = true };
    private static readonly AskedNumber SwitchWays = new("switches", "Switches", 3, 0, 60) { Whole = true };
    private static readonly AskedChoice Hand = new("hand", "Your hand is", "practised", [new("practised", "practised"), new("beginner", "a beginner's")]);
    private static readonly AskedNumber Average = new("mm", "Average distance to the bank, mm", 350, 10, 10_000);

    internal static ItemList<Question> All { get; } =
    [
        new("work", Theme.Work, "How many hours of work is it?", [Houses, LampsEach, WindowsEach, RoomsEach, SwitchWays, Hand], Work) { Also = "time how long", InTown = "bench" },
        new("cost", Theme.Work, "What do I buy, and what does it cost?", [Lamps with { Usual = 35 }, OfLamp, Milliamperes, Cell, Cells, Average], Cost) { Also = "price shopping list money", InTown = "book" },
    ];

    private static SumAnswer Work(Given given)
    {
        var beginner = given[Hand] == "beginner";
        var rows = new List<(BenchMinutes Work, double Times)>
        {
            (BenchMinutes.Plan, given[Houses]), (BenchMinutes.Paint, given[Houses]), (BenchMinutes.Torch, given[Houses]),
            (BenchMinutes.Glaze, given[Houses] * given[WindowsEach]), (BenchMinutes.Baffle, given[Houses] * (given[RoomsEach] - 1)),
            (BenchMinutes.BareLamp, given[Houses] * given[LampsEach]), (BenchMinutes.Tag, given[Houses] * given[LampsEach]), (BenchMinutes.Fit, given[Houses] * given[LampsEach]),
            (BenchMinutes.Close, given[Houses]), (BenchMinutes.Drill, given[Houses]), (BenchMinutes.Feed, given[Houses]), (BenchMinutes.Join, given[Houses]),
            (BenchMinutes.Read, given[Houses]), (BenchMinutes.GlueIn, given[Houses]), (BenchMinutes.Switch, given[SwitchWays]),
        };
        Figure Hours(string name, Func<BenchMinutes, double> minutes) => Figure.Given(name, rows.Sum(r => r.Times * minutes(r.Work)) / 60, "h", "minutes of each piece of work × how often; common practice, no source", Certainty.Typical);
        var hours = Hours("hours of work", w => w.Of(beginner));
        var least = Hours("at best", w => beginner ? w.Beginner.Least : w.Practised.Least);
        var most = Hours("at worst", w => beginner ? w.Beginner.Most : w.Practised.Most);
        var bench = BenchTown.Of(new Supply { Id = BenchTown.Pack, Part = "LR6", Series = 3 }, new Show(), StartingShape.All[0].Building);
        var days = Math.Floor(BuildSteps.All(bench, bench.Buildings[0]).ToItemList() is var steps ? HouseQuestions.Longest(steps) / (60 * 24) : 0);
        return new SumAnswer
        {
            Headline = hours,
            Words = "About {0} at the bench, {1} to {2}, for the light alone: the shells are not in it. Drying comes on top, at least {3} days for one house from cut card to glued in.",
            Figures = [hours, least, most, Figure.Given("days", days, "", "the longest chain of steps and what must dry between them; common practice, no source", Certainty.Typical)],
            Steps = rows.Where(r => r.Times > 0).Select(r => $"{char.ToUpperInvariant(r.Work.Words[0])}{r.Work.Words[1..]}: {r.Times:0} × {r.Work.Of(beginner):0.#} min = {FigureText.Of(r.Times * r.Work.Of(beginner) / 60, "h")}.").ToItemList(),
        };
    }

    private static SumAnswer Cost(Given given)
    {
        var lamp = LampOf(given);
        var resistor = QuickSums.WhichResistor(SupplyOf(given), lamp, Current.FromMilliamperes(given[Milliamperes])).Headline;
        var ohms = Resistance.FromOhms(resistor is { Unit: "Ω", Value: > 0 } r ? r.Value : 0);
        var houses = Enumerable.Range(1, (int)given[Lamps]).Select(i => BenchTown.House($"Lamp {i}", lamp, ohms, 1) with { Distance = Length.FromMillimetres(given[Average]) }).ToArray();
        var town = BenchTown.Of(SupplyOf(given), new Show(), houses) with { Wiring = new WiringChoices() };
        var study = TownStudy.Of(town);
        return new SumAnswer
        {
            Headline = study.PartsCost,
            Words = $"{{0}} in units of about one euro or dollar, tools apart, each lamp with a pair of its own to the bank. Prices are usual ones: change them where your shop differs.",
            Figures = [study.PartsCost],
            Steps = study.PartsList.Select(p => $"{p.Packs:0} × {p.Part}, {p.PackWords}: {p.Needed:0.#} wanted{(p.Spares > 0 ? $", {p.Spares:0.#} to spare" : "")}{(p.Cost is { } cost ? $"; {FigureText.Of(cost)}" : "")}.").ToItemList(),
            Town = town,
        };
    }
}
