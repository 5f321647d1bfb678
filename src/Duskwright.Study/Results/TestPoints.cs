using System.Globalization;
using Duskwright.Circuits.Lamps;
using Duskwright.Faults.Testing;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Bench;
using Duskwright.Study.Figures;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>The tests of a building, in order of the work. All work from lit and dark alone; a reading only sharpens.</summary>
internal static class TestPoints
{
    private const double TenthVolt = 0.1;

    private const string Fewer = "a usual meter in line, as parts are sold: fewer than one sound house in a hundred lies outside";

    internal static ItemList<TestPoint> Of(IReadOnlyList<LampResult> lamps, IReadOnlyList<PaneResult> panes, Building building, IReadOnlyList<TestPointQuery> queries, IReadOnlyList<Supply> supplies)
    {
        if (lamps.Count == 0)
        {
            return [];
        }

        // Several tests read the same.
        var known = new Dictionary<TestPointQuery, TestPointBands>();
        TestPointBands? Bands(TestPointQuery? q) => q is null ? null : known.TryGetValue(q, out var kept) ? kept : known[q] = q.Answer();
        var hung = queries.Count <= 1
            ? [new Hung(lamps, queries.Count == 0 ? null : queries[0], null, "")]
            : queries.Select(q => new Hung([.. lamps.Where(l => l.Supply == q.Supply)], q, q.Supply, $"pack {supplies.Select(s => s.Id).ToList().IndexOf(q.Supply) + 1}")).ToList();

        // A house on several supplies is tried on each of them by itself.
        IEnumerable<TestPoint> OnEach(TestPoint plain, Func<TestPoint, Hung, TestPoint> read) => hung.Select(h => read(
            (h.Supply is null ? plain : plain with { When = $"{plain.When}: {h.Pack}", Key = $"{plain.Key}{StageTests.OnSupply}{h.Supply}", Supply = h.Supply, Do = $"Only the pair that goes to {h.Pack}. {plain.Do}" }) with
            {
                ShouldLight = h.Lamps.Count,
                Lamps = h.Names,
                Watch = Watch(h.Lamps, Bands(h.Query)),
            },
            h));

        var all = lamps.Select(l => l.Name).ToItemList();
        var (flickers, roofLifts) = (lamps.Any(l => l.Part.Kind == LampKind.Flickering), building.Roof?.LiftsOff ?? false);
        var watch = Watch(lamps, hung.Count == 1 ? Bands(hung[0].Query) : null);
        var tests = new List<TestPoint> { OnTheBench(lamps, hung, Bands) with { Lamps = all, Watch = watch } };
        tests.AddRange(OnEach(
            new TestPoint("lamps in, roof off", $"Touch the house's pair to the test pack, plus to plus{(flickers ? "" : ", first through 1 kΩ: each glows and can be counted; then without")}. Look at each lamp itself.", 0, null) { Gate = 'B' },
            (test, h) => Read(test, h.Query?.OnTestPack(), Bands)));
        if (lamps.All(l => l.Part.Kind is LampKind.Led or LampKind.ReadyWired))
        {
            tests.Add(new TestPoint("turned round", "Touch the pair the wrong way round through 1 kΩ: nothing may light.", 0, null) { Gate = 'C', Lamps = all });
        }

        // A lamp without a roof has nothing that could leak.
        if (building.Kind == BuildingKind.House)
        {
            var dark = new TestPoint("roof on, in the dark", "Set the roof on dry, light the house from the test pack in a dark room and go round it for two minutes: only its windows glow. Look along eaves, corners and the foot of the walls.", lamps.Count, null) { Gate = 'C', Lamps = all, Watch = watch, Leaks = true };
            tests.Add(Closed(dark, TestPointSight.Of(lamps, panes), true, hung.Count == 1 ? hung[0].Query?.OnTestPack() : null, Bands));
        }

        tests.AddRange(OnEach(
            new TestPoint("fed, through the board", "The house in its place, the pair pulled through to the bank: touch its end there to the test pack, plus to plus, before it is joined. What is dark now was hurt by the pull.", 0, null) { Gate = 'D' },
            (test, h) => Closed(test, TestPointSight.Of(h.Lamps, panes), roofLifts, h.Query?.OnTestPack(), Bands)));
        tests.AddRange(OnEach(
            new TestPoint("fed, at the bank", "With a meter take volts at the pack together with amperes.", 0, null) { Gate = 'E' },
            (test, h) => Closed(test with { Do = $"{Joining(h.Query, Bands)} {test.Do}" }, TestPointSight.Of(h.Lamps, panes), roofLifts, h.Query, Bands)));
        tests.AddRange((building.Way?.Added ?? []).Where(a => a.Test is not null).Select(a => Own(a, a.Test!, all, watch)));
        tests.AddRange(OnEach(
            new TestPoint("glued in and dry", "Switch it on again once the glue is dry.", 0, null) { Gate = 'F' },
            (test, h) => Closed(test with { Do = $"{test.Do} {Again(h.Query)}" }, TestPointSight.Of(h.Lamps, panes), roofLifts, h.Query, Bands)));
        return tests.ToItemList();
    }

    // The maker says how many must light, not which: they are looked at one by one only where all or none must.
    private static TestPoint Own(OwnStep step, OwnTest test, ItemList<string> all, string? watch)
    {
        var lit = test.Lit ?? all.Count;
        return new TestPoint(step.Words, test.Words, lit, null) { Key = StageTests.Own(step.Key), Gate = null, Lamps = lit == 0 || lit == all.Count ? all : [], Watch = lit > 0 ? watch : null };
    }

    private static string Joining(TestPointQuery? query, Func<TestPointQuery?, TestPointBands?> bands) => query switch
    {
        null or { Company.Count: 0 } => "Join only this house and switch it on.",
        _ when bands(query.BeforeIt()) is { } before => $"It hangs on one run with {query.Listed}, which {Lights(query)}. Before you join it the run takes {Between(before.Band)} by a meter; then join it and switch on: both readings together tell what this house takes.",
        _ => $"It hangs on one run with {query.Listed}, which {Lights(query)}. Join it and switch on; or undo what goes on from it, and only what comes before it lights.",
    };

    private static string Again(TestPointQuery? query) => query is null or { Company.Count: 0 }
        ? "With a meter undo the other pairs of the pack, and take volts together with amperes."
        : $"{query.Listed} on its run {Lights(query)}. With a meter undo the pairs of the pack that are not on this run, and take volts together with amperes.";

    private static string Lights(TestPointQuery query) => query.Company.Count == 1 ? "lights with it" : "light with it";

    // Lamps are tried one by one, so the reading is that of one; where they differ each kind has its own, and the words say which.
    private static TestPoint OnTheBench(IReadOnlyList<LampResult> lamps, IReadOnlyList<Hung> hung, Func<TestPointQuery?, TestPointBands?> bands)
    {
        var plain = new TestPoint("lamps on the bench", "Touch each lamp with its resistor to the test pack, long leg to plus, one after the other; bend its joints gently while it is lit.", lamps.Count, null);
        if (hung[0].Query is null)
        {
            return plain;
        }

        var kinds = hung.SelectMany(h => h.Lamps.GroupBy(l => (l.Part.Id, l.Resistor.Value)).Select(g => (h.Pack, Lamps: g.ToList(), One: h.Query!.OneLamp(g.First().Name)))).ToList();
        if (kinds.Count == 1)
        {
            return Read(plain, kinds[0].One, bands) with { OneOut = null, MeterTells = false };
        }

        var each = kinds.Select(k => $"{string.Join(", ", k.Lamps.Select(l => l.Name))} {Between(bands(k.One)!.Band)}{(hung.Count > 1 ? $" on cells as in {k.Pack}" : "")}");
        return plain with { Do = $"{plain.Do} With a meter in line: {string.Join("; ", each)}." };
    }

    private static TestPoint Closed(TestPoint test, TestPointSight sight, bool roofLifts, TestPointQuery? query, Func<TestPointQuery?, TestPointBands?> bands)
    {
        var read = Read(test, query, bands) with { EyesTell = sight.Untold.Count == 0, Unseen = sight.Untold };
        return read.EyesTell ? read : read with { Instead = roofLifts ? $"Lift the roof off and count: {Counted(test.ShouldLight)}." : query is null ? null : ByMeter(query, bands) };
    }

    // The easiest that tells: the house alone, one of its switches alone, the house alone against its own reading while its lamps could be seen.
    private static string? ByMeter(TestPointQuery query, Func<TestPointQuery?, TestPointBands?> bands)
    {
        var alone = bands(query)!;
        if (alone.OneOut is { Tells: true } one)
        {
            return $"With a meter in line, {query.Who}: all well {Between(one.Healthy)}; with one lamp {(query.Company.Count > 0 ? "of this house " : "")}out {FigureText.Of(one.Out.MostAmps, "A")} at most.";
        }

        var switches = query.Typical.Packs[0].Groups.Select(g => (g.Id, Bands: bands(query.OnSwitch(g.Id))!.OneOut)).ToList();
        if (switches.Count > 1 && switches.TrueForAll(s => s.Bands.Tells))
        {
            return $"With a meter in line, {query.Who}, switch by switch: {string.Join("; ", switches.Select(s => $"{s.Id} {Between(s.Bands.Healthy)}"))}.";
        }

        return TestPointBands.Again(query, alone.PackVolts) is { Tells: true } again
            ? $"With a meter: write down volts and amperes of {query.Who} while every lamp of it is seen lit, and read both again now with the same meter on the same ranges, in a room as warm. At the same volts it must come within {FigureText.Of((again.Healthy.MostAmps - again.Healthy.LeastAmps) / 2, "A")} of that; one lamp out takes {FigureText.Of(again.Healthy.LikelyAmps - again.Out.LikelyAmps, "A")} off it."
            : null;
    }

    private static TestPoint Read(TestPoint test, TestPointQuery? query, Func<TestPointQuery?, TestPointBands?> answers)
    {
        if (query is null)
        {
            return test;
        }

        var (bands, source) = (answers(query)!, $"{query.Who}, {Fewer}");

        var one = bands.OneOut;
        var lamps = bands.LampAmps.Select(l => Figure.Given(l.Lamp, l.Amps, "A", $"{query.Who}, a usual meter in line", Certainty.Computed)).ToArray();
        return test with
        {
            Reading = Figure.From(Laws.Sum, $"current with {query.Who}", "A", lamps).Between(one.Healthy.LeastAmps, one.Healthy.MostAmps),
            At = Figure.Given("pack under this load", bands.PackVolts, "V", $"cells as they are at the start, {query.Who}", Certainty.Computed),
            PerTenthVolt = Figure.Given("for each tenth of a volt more at the pack", bands.AmpsPerVolt * TenthVolt, "A", "solved a little above and below", Certainty.Computed),
            OneOut = Figure.Given("with one lamp out", one.Out.LikelyAmps, "A", source, Certainty.Computed).Between(one.Out.LeastAmps, one.Out.MostAmps),
            MeterTells = one.Tells,
        };
    }

    private static string? Watch(IReadOnlyList<LampResult> lamps, TestPointBands? bands)
    {
        var flickering = lamps.Where(l => l.Part.Kind == LampKind.Flickering).ToList();
        if (flickering.Count == 0)
        {
            return null;
        }

        var share = ((FlickerLaw)LampLaws.Of(flickering[0].Part)).OnShare;
        var seconds = TestPointBands.WatchSeconds(flickering.Count, share).ToString("0", CultureInfo.InvariantCulture);
        var which = flickering.Count == lamps.Count ? flickering.Count == 1 ? "It flickers" : "They flicker" : $"{string.Join(", ", flickering.Select(l => l.Name))} flicker{(flickering.Count == 1 ? "s" : "")}";
        var meter = bands?.Extremes is { } extremes ? $" A meter swings between {FigureText.Of(extremes.Least, "A")} and {FigureText.Of(extremes.Most, "A")}; its mean is {FigureText.Of(bands.Healthy.Amps, "A")}." : "";
        return $"{which}: watch for {seconds} s until each has been both lit and dark.{meter} Never turned round: the driver does not bear it.";
    }

    private static string Between(TestBand band) => $"{FigureText.Of(band.LeastAmps, "A")} to {FigureText.Of(band.MostAmps, "A")}";

    private static string Counted(int lamps) => lamps == 1 ? "one lamp" : $"{lamps} lamps must be lit";

    /// <summary>The lamps of a house on one supply. Supply and pack are told where there are several.</summary>
    private sealed record Hung(IReadOnlyList<LampResult> Lamps, TestPointQuery? Query, string? Supply, string Pack)
    {
        internal ItemList<string> Names => Lamps.Select(l => l.Name).ToItemList();
    }
}
