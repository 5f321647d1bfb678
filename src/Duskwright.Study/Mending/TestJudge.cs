using Duskwright.Circuits.Metering;
using Duskwright.Faults.Testing;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Study.Mending;

/// <summary>Judges the result of a test of one house.</summary>
internal sealed class TestJudge(BuildingResult house, TestPoint test, IReadOnlyList<TestPointQuery> queries, IReadOnlyList<LogEntry> log, Func<FaultQuestion, FaultAnswer> causes)
{
    private const string LookFirst = "Begin where the lamps that are wrong have something in common: the joint or the pair that only they share, then each lamp's own joints.";

    // Where the test is made on several supplies at once, no reading is that of one of them.
    private readonly TestPointQuery? query = queries.Count == 1 ? queries[0] : null;

    internal TestVerdict Judge(TestOutcome result)
    {
        var wrong = Seen(result);
        var read = query is not null && test.Reading is not null && result.Amperes is not null ? Read(query, result.Amperes.Value, result.Volts) : ((OneOut Bands, string? Wrong)?)null;
        var band = read is { } r ? Figure.Given("what sound parts can give", r.Bands.Healthy.LikelyAmps, "A", Source(result), Plan.Parts.Certainty.Computed).Between(r.Bands.Healthy.LeastAmps, r.Bands.Healthy.MostAmps) : null;
        var words = string.Join(" ", result.OffBank.Select(r => OffBank.Wrong(query, r)).Prepend(read?.Wrong).Prepend(Leak(result)).Prepend(wrong).OfType<string>());
        if (words.Length > 0)
        {
            var lamps = words != Leak(result);
            ItemList<FaultSuspect> found = test.ShouldLight > 0 ? [.. Leaking(result), .. lamps ? Causes(result) : []] : test.IsOwn ? [] : TurnedRound(result);
            return new TestVerdict(false, words, band, found, null) { LookFirst = found.Count == 0 ? First(result) : null };
        }

        var sure = test.EyesTell || read is { Bands.Tells: true };
        return new TestVerdict(true, "As it should be.", band, [], sure ? null : test.Instead ?? $"Nothing from outside tells {string.Join(", ", test.Unseen)} out from all well.");
    }

    private string? Seen(TestOutcome result)
    {
        if (test.IsCounted)
        {
            return result.Lit is { } some && some != test.ShouldLight ? $"{some} of {house.Lamps.Count} {(some == 1 ? "is" : "are")} lit; {test.ShouldLight} should be." : null;
        }

        if (test.ShouldLight == 0)
        {
            var though = test.IsOwn ? "nothing should" : "the pair is turned round";
            var lit = result.Looks.Where(l => l.Value is Mending.Seen.Lit or Mending.Seen.Dim).Select(l => l.Key).Order(StringComparer.Ordinal).ToList();
            return lit.Count > 0 ? $"{string.Join(", ", lit)} light{(lit.Count == 1 ? "s" : "")} though {though}." : result.Lit > 0 ? $"{result.Lit} of {house.Lamps.Count} light though {though}." : null;
        }

        string? Those(Seen look, string word)
        {
            var lamps = result.Looks.Where(l => l.Value == look).Select(l => l.Key).Order(StringComparer.Ordinal).ToList();
            return lamps.Count == 0 ? null : $"{string.Join(", ", lamps)} {(lamps.Count == 1 ? "is" : "are")} {word}.";
        }

        var seen = string.Join(" ", new[] { Those(Mending.Seen.Dark, "dark"), Those(Mending.Seen.Dim, "dim") }.OfType<string>());
        return seen.Length > 0 ? seen : result.Lit is { } count && count < test.ShouldLight ? $"{count} of {test.ShouldLight} are lit." : null;
    }

    private (OneOut Bands, string? Wrong) Read(TestPointQuery at, double amps, double? volts)
    {
        var (healthy, one, range) = Expected(test.Gate == 'A' ? at.OneLamp(test.Lamps[0]) : On(test, at), volts);
        if (LastSound(at) is { } last)
        {
            (healthy, one) = (healthy.Given(last.Expected, last.Amps, last.Error), one.Given(last.Expected, last.Amps, last.Error));
        }

        var bands = OneOut.Of(healthy, one, range);
        return (bands, bands.Healthy.Holds(amps) ? null
            : amps < bands.Healthy.LeastAmps ? $"{FigureText.Of(amps, "A")} is below {FigureText.Of(bands.Healthy.LeastAmps, "A")}, the least that sound parts give."
            : $"{FigureText.Of(amps, "A")} is above {FigureText.Of(bands.Healthy.MostAmps, "A")}, the most that sound parts give.");
    }

    // The last reading of the whole house that was passed; a lamp tried alone on the bench says nothing of the house, nor do others that were on its run then.
    private (Prediction Expected, double Amps, double Error)? LastSound(TestPointQuery at)
    {
        var entry = test.Gate == 'A' ? null : log.LastOrDefault(l => l.Kind == LogKind.Test && l.Building == house.Building.Key && l.Passed == true && l.Current is { Amperes: > 0 } && house.Tests.Any(t => t.Key == l.Test && t.Supply == test.Supply && t.Gate is not 'A' && t.ShouldLight > 0 && (!t.IsAtTheBank || at.Company.Count == 0)));
        if (entry is null)
        {
            return null;
        }

        var circuit = On(house.Tests.First(t => t.Key == entry.Test), at);
        var amps = entry.Current!.Value.Amperes;
        var (expected, _, range) = Expected(circuit, entry.Voltage is { Volts: > 0 } volts ? volts.Volts : null);
        return (expected, amps, range.Show(Math.Min(amps, range.FullScale)).Error);
    }

    private static TestPointQuery On(TestPoint test, TestPointQuery at) => test.IsAtTheBank ? at : at.OnTestPack();

    private static (Prediction Healthy, Prediction Out, MeterRange Range) Expected(TestPointQuery circuit, double? volts)
    {
        if (volts is { } read)
        {
            return TestPointBands.AtVolts(circuit, read);
        }

        var bands = circuit.Answer();
        return (bands.Healthy, bands.Out, bands.Range);
    }

    private string Source(TestOutcome result) =>
        $"{query?.Who ?? "this house alone"}, a usual meter in line{(result.Volts is { } v ? $", at {FigureText.Of(v, "V")}" : "")}{(query is not null && LastSound(query) is { } last ? $", after {FigureText.Of(last.Amps, "A")} when it was last sound" : "")}";

    private ItemList<FaultSuspect> Causes(TestOutcome result)
    {
        if (test.IsCounted)
        {
            return [];
        }

        // On several supplies each lamp speaks for its own; lamps that were only counted speak for none.
        bool Speaks(TestPointQuery on) => house.Lamps.Any(l => l.Supply == on.Supply && result.Looks.GetValueOrDefault(l.Name, result.Lit == 0 ? Mending.Seen.Dark : Mending.Seen.Lit) is Mending.Seen.Dark or Mending.Seen.Dim);
        return queries.Where(q => queries.Count == 1 || Speaks(q)).SelectMany(q => Causes(result, q)).OrderByDescending(s => s.Share).ToItemList();
    }

    private ItemList<FaultSuspect> Causes(TestOutcome result, TestPointQuery on)
    {
        // Where lamps were only counted, none or all of them are known one by one.
        var unseen = result.Lit == 0 ? Mending.Seen.Dark : result.Lit < test.ShouldLight || !test.EyesTell ? Mending.Seen.Unknown : Mending.Seen.Lit;
        var looks = house.Lamps.Where(l => test.Lamps.Contains(l.Name) && (queries.Count == 1 || l.Supply == on.Supply)).ToDictionary(l => (l.Building, l.Name), l => result.Looks.GetValueOrDefault(l.Name, result.Lit is null && result.Looks.Count == 0 ? Mending.Seen.Unknown : unseen));

        // Nobody says of others on the run how they look.
        foreach (var pair in On(test, on).Typical.Packs[0].Groups.SelectMany(g => g.Pairs).Where(p => p.Building != on.Building))
        {
            foreach (var lamp in pair.Lamps)
            {
                looks[(pair.Building, lamp.Name)] = Mending.Seen.Unknown;
            }
        }

        // On the bench the reading is that of one lamp, on several supplies at once that of none of them.
        var ofThese = queries.Count == 1;
        return causes(new FaultQuestion(on.Supply, looks, test.Gate == 'A' || !ofThese ? null : result.Amperes, ofThese ? result.Volts : null) { OffBank = ofThese ? result.OffBank : [] }).Suspects;
    }

    private string First(TestOutcome result) => test.ShouldLight == 0 || (test.IsCounted && result.Lit > test.ShouldLight)
        ? "Look for what still feeds them: a bare end, a drop of solder across two joints, a lead on the wrong pair."
        : queries.Count > 1 ? $"The house hangs on {queries.Count} packs: test the pair to each by itself; where one lights all its lamps, what is wrong is on {(queries.Count == 2 ? "the other" : "another")}." : LookFirst;

    private string? Leak(TestOutcome result) => test.Leaks && result.Leak is { } leak ? $"Light shows where it should not: {leak.TrimEnd('.')}." : null;

    private ItemList<FaultSuspect> Leaking(TestOutcome result) => Leak(result) is null ? [] :
    [
        new FaultSuspect
        {
            Words = ["a seam is open there, or a wall or roof lets light through"],
            Remedy = "A thin bright line is a seam: close it with black strip or filler. A patch that glows is a wall: one more coat of black inside, dry, then look again.",
            Share = 1,
            Explains = true,
            Dark = [],
            Dim = [],
            IsWide = false,
            Current = Figure.Given("a leak takes no current", 0, "A", "light, not current, gets out", Plan.Parts.Certainty.Computed),
        },
    ];

    // Turned round, only a lamp that is itself the wrong way round can light; where all light the ends are marked wrongly.
    private ItemList<FaultSuspect> TurnedRound(TestOutcome result)
    {
        var lit = result.Looks.Where(l => l.Value is Mending.Seen.Lit or Mending.Seen.Dim).Select(l => l.Key).Order(StringComparer.Ordinal).ToList();
        var all = lit.Count == house.Lamps.Count || result.Lit == house.Lamps.Count;
        return [new FaultSuspect
        {
            Words = all ? ["the pair's ends are marked the wrong way round"] : lit.Count > 0 ? lit.Select(l => $"lamp {l} is the wrong way round").ToItemList() : ["a lamp is the wrong way round"],
            Remedy = all ? "Mark the ends of the pair anew: plus where the house lights." : "Unsolder what lights and turn it: the long leg is plus.",
            Share = 1,
            Explains = true,
            Dark = [],
            Dim = [],
            IsWide = all,
            Current = Figure.Given("turned round", 0, "A", "an LED passes nothing backwards", Plan.Parts.Certainty.Computed),
        }];
    }
}
