using System.Globalization;
using Duskwright.Circuits.Lamps;
using Duskwright.Faults.Testing;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>The tests of a building, in order of the work. All work from lit and dark alone; a reading only sharpens.</summary>
internal static class TestPoints
{
    private const double TenthVolt = 0.1;

    private static readonly string Source = "this house alone, a usual meter in line, as parts are sold: fewer than one sound house in a hundred lies outside";

    internal static ItemList<TestPoint> Of(IReadOnlyList<LampResult> lamps, IReadOnlyList<PaneResult> panes, Building building, TestPointQuery? query, Memo memo)
    {
        if (lamps.Count == 0)
        {
            return [];
        }

        TestPointBands? Bands(TestPointQuery? q) => q is null ? null : memo.Get(q, x => x.Answer());
        var (onPack, atBank) = (Bands(query?.OnTestPack()), Bands(query));
        var watch = Watch(lamps, atBank);
        var flickers = lamps.Any(l => l.Part.Kind == LampKind.Flickering);
        var sight = TestPointSight.Of(lamps, panes);
        var tests = new List<TestPoint>
        {
            OnTheBench(lamps, query, Bands) with { Watch = watch },
            Read(new TestPoint("lamps in, roof off", $"Touch the house's pair to the test pack, plus to plus{(flickers ? "" : ", first through 1 kΩ: each glows and can be counted; then without")}. Look at each lamp itself.", lamps.Count, null) { Gate = 'B', Watch = watch }, onPack),
        };
        if (lamps.All(l => l.Part.Kind is LampKind.Led or LampKind.ReadyWired))
        {
            tests.Add(new TestPoint("turned round", "Touch the pair the wrong way round through 1 kΩ: nothing may light.", 0, null) { Gate = 'C' });
        }

        // A lamp without a roof has nothing that could leak.
        if (building.Kind == BuildingKind.House)
        {
            tests.Add(Closed(new TestPoint("roof on, in the dark", "Set the roof on dry, light the house from the test pack in a dark room and go round it for two minutes: its windows glow, and nothing else does. Look along the eaves, the corners, the foot of the walls and through every pane.", lamps.Count, null) { Gate = 'C', Watch = watch, Leaks = true }, sight, true, query?.OnTestPack(), Bands));
        }

        var roofLifts = building.Roof?.LiftsOff ?? false;
        tests.Add(Closed(new TestPoint("fed, through the board", "Set the house in its place and pull the pair through to the bank. Before it is joined to anything, touch that far end to the test pack, plus to plus: what was sound before and is dark now was hurt by the pull.", lamps.Count, null) { Gate = 'D', Watch = watch }, sight, roofLifts, query?.OnTestPack(), Bands));
        tests.Add(Closed(new TestPoint("fed, at the bank", "Join only this house and switch it on. With a meter take volts at the pack together with amperes.", lamps.Count, null) { Gate = 'E', Watch = watch }, sight, roofLifts, query, Bands));
        tests.Add(Closed(new TestPoint("glued in and dry", "Switch it on again once the glue is dry. With a meter undo the other pairs of the pack, and take volts together with amperes.", lamps.Count, null) { Gate = 'F', Watch = watch }, sight, roofLifts, query, Bands));
        return tests.ToItemList();
    }

    // Lamps are tried one by one, so the reading is that of one; where they differ each kind has its own, and the words say which.
    private static TestPoint OnTheBench(IReadOnlyList<LampResult> lamps, TestPointQuery? query, Func<TestPointQuery?, TestPointBands?> bands)
    {
        var plain = new TestPoint("lamps on the bench", "Touch each lamp with its resistor to the test pack, long leg to plus, one after the other; bend its joints gently while it is lit.", lamps.Count, null);
        if (query is null)
        {
            return plain;
        }

        var kinds = lamps.GroupBy(l => (l.Part.Id, l.Resistor.Value)).ToList();
        if (kinds.Count == 1)
        {
            return Read(plain, bands(query.OneLamp(lamps[0].Name))) with { OneOut = null, MeterTells = false };
        }

        var each = kinds.Select(k => (Lamps: string.Join(", ", k.Select(l => l.Name)), Bands: bands(query.OneLamp(k.First().Name))!)).Select(k => $"{k.Lamps} {Between(k.Bands.Band)}");
        return plain with { Do = $"{plain.Do} With a meter in line: {string.Join("; ", each)}." };
    }

    private static TestPoint Closed(TestPoint test, TestPointSight sight, bool roofLifts, TestPointQuery? query, Func<TestPointQuery?, TestPointBands?> bands)
    {
        var read = Read(test, bands(query)) with { EyesTell = sight.Untold.Count == 0, Unseen = sight.Untold };
        return read.EyesTell ? read : read with { Instead = roofLifts ? $"Lift the roof off and count: {Counted(test.ShouldLight)}." : query is null ? null : ByMeter(query, bands) };
    }

    // The easiest that tells: the house alone, one of its switches alone, the house alone against its own reading while its lamps could be seen.
    private static string? ByMeter(TestPointQuery query, Func<TestPointQuery?, TestPointBands?> bands)
    {
        var alone = bands(query)!;
        if (alone.OneOut is { Tells: true } one)
        {
            return $"With a meter in line, this house alone: all well {Between(one.Healthy)}; with one lamp out {FigureText.Of(one.Out.MostAmps, "A")} at most.";
        }

        var switches = query.Typical.Packs[0].Groups.Select(g => (g.Id, Bands: bands(query.OnSwitch(g.Id))!.OneOut)).ToList();
        if (switches.Count > 1 && switches.TrueForAll(s => s.Bands.Tells))
        {
            return $"With a meter in line, this house alone, switch by switch: {string.Join("; ", switches.Select(s => $"{s.Id} {Between(s.Bands.Healthy)}"))}.";
        }

        return TestPointBands.Again(query, alone.PackVolts) is { Tells: true } again
            ? $"With a meter: write down volts and amperes of this house alone while every lamp is seen lit, and read both again now with the same meter on the same ranges, in a room as warm. At the same volts it must come within {FigureText.Of((again.Healthy.MostAmps - again.Healthy.LeastAmps) / 2, "A")} of that; one lamp out takes {FigureText.Of(again.Healthy.LikelyAmps - again.Out.LikelyAmps, "A")} off it."
            : null;
    }

    private static TestPoint Read(TestPoint test, TestPointBands? bands)
    {
        if (bands is null)
        {
            return test;
        }

        var one = bands.OneOut;
        var lamps = bands.LampAmps.Select(l => Figure.Given(l.Lamp, l.Amps, "A", "the house alone, a usual meter in line", Certainty.Computed)).ToArray();
        return test with
        {
            Reading = Figure.From(Laws.Sum, "current with this house alone", "A", lamps).Between(one.Healthy.LeastAmps, one.Healthy.MostAmps),
            At = Figure.Given("pack under this load", bands.PackVolts, "V", "cells as they are at the start, this house alone", Certainty.Computed),
            PerTenthVolt = Figure.Given("for each tenth of a volt more at the pack", bands.AmpsPerVolt * TenthVolt, "A", "solved a little above and below", Certainty.Computed),
            OneOut = Figure.Given("with one lamp out", one.Out.LikelyAmps, "A", Source, Certainty.Computed).Between(one.Out.LeastAmps, one.Out.MostAmps),
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
}
