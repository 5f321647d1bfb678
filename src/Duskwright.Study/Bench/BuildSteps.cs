using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Bench;

/// <summary>The steps that are still to be done on a building, from its kind, its roof and how far it is built.</summary>
/// <remarks>
/// Minutes are the middle of what a practised hand takes, and drying the longer end of the usual range at about 20 °C (cold or damp
/// doubles it): common practice, no source. What practice gives no figure for is marked "typical, from memory". The glue's and paint's own label comes first.
/// </remarks>
public static class BuildSteps
{
    private const string Practice = "common practice, no source";
    private const string Memory = "typical, from memory";
    private const int Hour = 60;
    private const int Day = 24 * Hour;

    // Mixing paint and washing the brush, laying out the covering, heating the iron and tinning its tip: typical, from memory.
    private const int SettingOut = 5;
    private static readonly string[] SetOutOnce = ["black", "paint", "cover", "lamps"];

    internal const string GlueIn = "glue-in";
    /// <summary>The key of the step in which the hole for its pair is drilled.</summary>
    public const string Drill = "drill";

    /// <summary>The key of the step in which a house is set in its place and its pair is pulled.</summary>
    public const string Feed = "feed";

    private const string Frost = "frost";
    private const string Darken = "darken";
    internal const string LastTest = "last-test";
    private const string Label = "Mind the label: air and gloves for solvents and lacquers.";
    private const string QuickGlue = "Quick glue bonds skin, fumes and hazes panes: fresh air, eye protection, and a day to air before panes are closed in.";
    private const string Fitting = $"Hold each lead until the glue bears the pull of its wire. {QuickGlue}";
    private const string PowerOff = "Power off, cells out, while anything is wet; test again when it is dry.";

    /// <summary>The steps that remain, in an order in which they can be done.</summary>
    /// <param name="town">The town, for its usual parts and its log.</param>
    /// <param name="building">One of its buildings.</param>
    /// <returns>The steps; empty for a building that is fixed. What is done is not waited for; when it is dry, <see cref="HouseWork"/> tells.</returns>
    public static ItemList<BenchStep> Of(Town town, Building building)
    {
        var left = HouseWork.Of(town, building, []).Steps.Where(s => !s.IsDone).Select(s => s.Step).ToList();
        return left.Select(s => s with { After = s.After.Where(w => left.Exists(l => l.Key == w.Step)).ToItemList() }).ToItemList();
    }

    /// <summary>Every step, done or not, the maker's own among them, in an order in which they can be done.</summary>
    /// <param name="town">The town, for its usual parts.</param>
    /// <param name="building">One of its buildings.</param>
    /// <returns>The steps.</returns>
    public static ItemList<BenchStep> All(Town town, Building building)
    {
        var usual = (building.Kind == BuildingKind.House ? House(town, building) : LampAlone(town, building)).ToList();

        // A house without windows has no glass to wait for.
        var steps = OwnWay.Of([.. usual.Select(s => s with { After = s.After.Where(w => usual.Exists(o => o.Key == w.Step)).ToItemList() })], building.Way);
        return steps.Select(s => s with { SetUpMinutes = s.Minutes > SettingOut && SetOutOnce.Contains(s.Key) ? SettingOut : 0, ShelfMinutes = OnShelf(s, steps) }).ToItemList();
    }

    // It may be handled when the first of what waits for it may begin; a house that is glued in stands where it is, sheet and lamps lie anywhere.
    private static int OnShelf(BenchStep step, List<BenchStep> steps) =>
        step.DryMinutes == 0 || step.Key is GlueIn or Frost or Darken ? 0 : steps.SelectMany(s => s.After).Where(w => w.Step == step.Key).Select(w => w.DryMinutes).DefaultIfEmpty(step.DryMinutes).Min();

    /// <summary>The steps that a building must have behind it to stand as it does.</summary>
    /// <param name="building">The building; a step of its maker's own is behind it with the step that waits for it.</param>
    /// <returns>Their keys.</returns>
    internal static IReadOnlySet<string> BehindIt(Building building)
    {
        var usual = Usual(building.State);
        return (building.Way?.Added ?? []).Where(a => building.State == BuildingState.Fixed || (a.Before is { } before && usual.Contains(before))).Select(a => a.Key).Concat(usual).ToHashSet(StringComparer.Ordinal);
    }

    private static HashSet<string> Usual(BuildingState state) => state switch
    {
        BuildingState.Idea => [],
        BuildingState.Shell => ["cut"],
        BuildingState.Fitted => ["plan", "cut", "black", "torch", "paint", Frost, "glaze", "baffles", "lamps", "tag", Darken, "fit"],
        _ => ["plan", "cut", "black", "torch", "paint", Frost, "glaze", "baffles", "lamps", "tag", Darken, "fit", "close", "cover", "drill", "feed", "join", GlueIn, LastTest],
    };

    private static IEnumerable<BenchStep> House(Town town, Building building)
    {
        var (lamps, windows, rooms) = (Lamps(building), building.Storeys.Sum(s => s.Rooms.Sum(r => r.Windows.Count)), building.Storeys.Sum(s => s.Rooms.Count));
        var lifts = building.Roof?.LiftsOff ?? false;
        yield return Step("plan", "plan and code the lamps", 7.5, []);
        yield return Step("cut", "cut and join the walls", 45, [], 2 * Hour, ["card or balsa", "PVA"], "Cut away from yourself with a sharp blade.", Memory);
        yield return Step("black", "black out inside, then white where light is to bounce", 15, [After("cut", 2 * Hour)], Day, ["black acrylic", "white acrylic"], Label);
        yield return Step("torch", "hold a torch inside in the dark and seal the leaks", 4, [After("black", 2 * Hour)]);
        yield return Step("paint", "paint outside", 20, [After("torch", 0)], Day, ["acrylic paint"], Label, Memory);
        var frosted = building.Storeys.Sum(s => s.Rooms.Sum(r => r.Windows.Count(w => w.Pane?.Material == PaneMaterial.Frosted)));
        if (frosted > 0)
        {
            yield return Step(Frost, $"coat clear sheet on both faces for {(frosted == 1 ? "the frosted pane" : $"{frosted} frosted panes")}, let it dry and cut", 5 + frosted, [], 2 * Hour, ["clear sheet", "matt varnish"], Label, Memory);
        }

        if (windows > 0)
        {
            yield return Step("glaze", windows == 1 ? "glaze the window" : $"glaze {windows} windows", (3 * windows) - frosted, [After("paint", Day), After("black", Day), After(Frost, 2 * Hour)], Day, ["clear or tracing sheet", "canopy-type PVA"], $"Use a canopy-type PVA. {QuickGlue}");
        }

        if (rooms > 1)
        {
            yield return Step("baffles", $"fit baffles between {rooms} rooms", 4.5 * rooms, [After("torch", 0)], 2 * Hour, ["card", "PVA"]);
        }

        foreach (var step in LampSteps(town, building, lamps))
        {
            yield return step;
        }

        yield return Step(Darken, "darken bright wire and solder, and the edges of the lamps' card", 5, [After("tag", 0)], 2 * Hour, ["matt black acrylic"], PowerOff, Memory);
        yield return Step("fit", $"fit {Counted(lamps)}, anchor the wire and leave a loop", 4.5 * lamps, [After("tag", 0), After(Darken, Hour), After("torch", 0), After("baffles", 2 * Hour), After("glaze", 6 * Hour)], 2 * Hour, ["PVA", "thread or tape"], Fitting);
        yield return lifts
            ? Step("close", "try the lift-off roof and look in the dark from all sides", 8, [After("fit", 2 * Hour), After("glaze", Day)]) with { Tests = [StageTests.RoofOff, StageTests.TurnedRound, StageTests.InTheDark] }
            : Step("close", "test, look in the dark from all sides, and glue the roof on", 8, [After("fit", 2 * Hour), After("glaze", Day)], Day, ["PVA"], PowerOff) with { Seals = true, Tests = [StageTests.RoofOff, StageTests.TurnedRound, StageTests.InTheDark] };
        yield return Step("cover", "cover the roof and black its edges", 30, [After("close", lifts ? 0 : 2 * Hour)], Day, ["roof covering", "PVA"], $"{PowerOff} {Label}", Memory);
        foreach (var step in OnTheBoard(town, building, "close", lifts ? 0 : 2 * Hour, "cover"))
        {
            yield return step;
        }
    }

    private static IEnumerable<BenchStep> LampAlone(Town town, Building building)
    {
        var lamps = Lamps(building);
        yield return Step("plan", "plan and code the lamps", 7.5, []);
        yield return Step("cut", "make the post, sign or hull", 45, [], 2 * Hour, ["card, wire or balsa", "PVA"], "Cut away from yourself with a sharp blade.", Memory);
        foreach (var step in LampSteps(town, building, lamps))
        {
            yield return step;
        }

        yield return Step("fit", $"fit {Counted(lamps)} and anchor the wire", 4.5 * lamps, [After("tag", 0), After("cut", 2 * Hour)], 2 * Hour, ["PVA"], Fitting);
        foreach (var step in OnTheBoard(town, building, "fit", 2 * Hour, "fit"))
        {
            yield return step;
        }
    }

    // A ready-wired lamp needs its resistor and sleeve only; a bare one its wires as well.
    private static IEnumerable<BenchStep> LampSteps(Town town, Building building, int lamps)
    {
        var readyWired = (building.Led ?? town.Wiring.Led) is { } id && Catalogue.FindLamp(town, id)?.Kind == LampKind.ReadyWired;
        yield return Step("lamps", $"set {Counted(lamps)} on card, mark plus (the long leg) before trimming, then solder, tin and sleeve", (readyWired ? 5 : 10) * lamps, [After("plan", 0)], 0, ["solder", "wire", "resistors", "sleeve"], "The tip is at 350 °C: stand, eye protection, fumes away from your face, away from the model; wash your hands afterwards.");
        yield return Step("tag", $"test and tag {Counted(lamps)}", 1.5 * lamps, [After("lamps", 0)], 0, ["labels"], "First power through a resistor: a bare lamp on a pack burns out.") with { Tests = [StageTests.OnTheBench] };
    }

    private static IEnumerable<BenchStep> OnTheBoard(Town town, Building building, string before, int dryMinutes, string covered)
    {
        var cells = CellCaution.Of(town, building);
        yield return Step(Drill, "drill and line the hole", 3, [After("plan", 0)], 0, ["tube"], "Look for wires and timbers under the board before drilling; eye protection.");
        yield return Step(Feed, "feed the pair and label its end", 2, [After("drill", 0), After(before, dryMinutes)], 0, ["label"]);
        yield return Step("join", "join the pair at the bank and test", 4, [After("feed", 0)], 0, ["solder"], With("Cells out while you join; fuse at the pack; no bare ends. The first power goes through 1 kΩ: a short then stays cold.", cells)) with { Tests = [StageTests.Fed] };
        yield return Step(GlueIn, "test once more, glue it in and black the gap under the walls", 7.5, [After("join", 0), After(covered, covered == before ? dryMinutes : Day)], Day, ["PVA", "black strip"], PowerOff) with
        {
            Seals = true,
            Tests = before == "close" ? [StageTests.AtTheBank] : [StageTests.RoofOff, StageTests.TurnedRound, StageTests.AtTheBank],
        };
        yield return Step(LastTest, "switch it on again and write down what lights", 1.5, [After(GlueIn, Day)], caution: With("Keep a hand at the switch: what smells or grows warm is switched off at once, cells out.", cells)) with { Tests = [StageTests.GluedIn] };
    }

    private static int Lamps(Building building) => Math.Max(1, building.DescribedLamps().Any() ? building.DescribedLamps().Count() : building.Leds ?? 1);

    private static string Counted(int lamps) => lamps == 1 ? "the lamp" : $"{lamps} lamps";

    private static string With(string caution, string? more) => more is null ? caution : $"{caution} {more}";

    private static StepWait After(string step, int dryMinutes) => new(step, dryMinutes);

    private static BenchStep Step(string key, string words, double minutes, ItemList<StepWait> after, int dryMinutes = 0, ItemList<string>? materials = null, string? caution = null, string source = Practice) =>
        new(key, words, (int)Math.Ceiling(minutes), after, dryMinutes, false, materials ?? [], caution, source);
}
