using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study;
using Duskwright.Study.Bench;
using Duskwright.Study.Mending;
using Duskwright.Study.Results;

namespace Duskwright.Towns;

/// <summary>What a form of the bench sends, read into an entry of the log.</summary>
public static class BenchForm
{
    /// <summary>A lamp's field is this and its name.</summary>
    public const string LampField = "lamp:";

    private const string TimeOfForm = "yyyy-MM-dd'T'HH:mm:ss";
    private const double MostRead = 100_000;

    /// <summary>Reads the fields of a form. The seal gate stands here: a step whose tests were not passed is ticked with a reason or not at all.</summary>
    /// <param name="fields">The fields by name: <c>what</c> (tick, test, note or withdraw), <c>building</c>, <c>step</c>, <c>test</c>, <c>all</c>, lamps, <c>milliamperes</c>, <c>volts</c>, <c>ohms</c>, <c>ohms-over</c>, <c>diode</c>, <c>diode-over</c>, <c>reversed</c>, <c>photograph</c>, <c>elsewhere</c> (where light shows that should not), <c>despite</c>, <c>note</c>, <c>corrects</c>, and <c>at</c>, the sender's time.</param>
    /// <param name="study">The town's study.</param>
    /// <param name="now">The time here, where the sender tells none.</param>
    /// <returns>The entry, or in one sentence why it is refused.</returns>
    public static (LogEntry? Entry, string? Why) Read(IReadOnlyDictionary<string, string> fields, TownStudy study, DateTime now)
    {
        string? Said(string name) => fields.TryGetValue(name, out var text) && !string.IsNullOrWhiteSpace(text) ? text.Trim() : null;

        var at = DateTime.TryParseExact(Said("at"), TimeOfForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var sent) ? sent : now;
        var house = study.Buildings.FirstOrDefault(b => b.Building.Key == Said("building"));
        if (Said("building") is { } named && house is null)
        {
            return (null, $"There is no house “{named}” in this town any more.");
        }

        var entry = new LogEntry
        {
            Date = DateOnly.FromDateTime(at),
            Time = new TimeOnly(at.Hour, at.Minute, at.Second),
            Kind = LogKind.Note,
            Building = house?.Building.Key,
            Note = Said("note"),
            Photograph = Said("photograph"),
        };
        return Said("what") switch
        {
            "tick" when house is not null => Tick(entry, study.Work(house.Building.Key)!, Said("step"), Said("despite")),
            "test" when house is not null => Tested(entry, study, house, fields, Said("test")),
            "note" => entry is { Note: null, Photograph: null } ? (null, "The note is empty.") : (entry with { Step = house is null ? null : study.Work(house.Building.Key)!.Steps.FirstOrDefault(s => s.Step.Key == Said("step"))?.Step.Key }, null),
            "withdraw" => study.Town.StandingLog().Any(l => l.Id is not null && l.Id == Said("corrects"))
                ? (entry with { Kind = LogKind.Withdrawn, Corrects = Said("corrects") }, null)
                : (null, "That entry does not stand any more."),
            _ => (null, "The form does not say what was done."),
        };
    }

    private static (LogEntry? Entry, string? Why) Tick(LogEntry entry, HouseWork work, string? key, string? despite)
    {
        if (work.Steps.FirstOrDefault(s => s.Step.Key == key) is not { } step)
        {
            return (null, $"{work.Building.Name} has no such step any more.");
        }

        var untested = step.Untested.Count;
        return untested > 0 && despite is null
            ? (null, $"{work.Building.Name}: “{step.Step.Words}” waits for {(untested == 1 ? "a test that has" : $"{untested} tests that have")} not been passed. Make {(untested == 1 ? "it" : "them")}, or say why you go on all the same.")
            : (entry with { Kind = step.Step.Seals ? LogKind.Seal : LogKind.StepDone, Step = step.Step.Key, Despite = untested > 0 ? despite : null }, null);
    }

    private static (LogEntry? Entry, string? Why) Tested(LogEntry entry, TownStudy study, BuildingResult house, IReadOnlyDictionary<string, string> fields, string? key)
    {
        if (house.Tests.FirstOrDefault(t => t.Key == key) is not { } test)
        {
            return (null, $"{house.Building.Name} has no such test any more.");
        }

        var (current, noCurrent) = Number(fields, "milliamperes", "a current; write milliamperes, 16.5 or 16,5");
        var (volts, noVolts) = Number(fields, "volts", "a voltage; write volts, 4.4 or 4,4");
        var (ohms, noOhms) = Number(fields, "ohms", "a resistance; write ohms, 5.3 or 5,3");
        var (diode, noDiode) = Number(fields, "diode", "what the diode range shows; write volts, 1.9 or 1,9");
        if ((noCurrent ?? noVolts ?? noOhms ?? noDiode) is { } wrong)
        {
            return (null, wrong);
        }

        var lamps = house.Lamps.Where(l => test.Lamps.Contains(l.Name)).ToList();
        var looks = lamps.Select(l => (l.Name, As: Look(fields, l.Name))).Where(l => l.As is not null).Select(l => new LampSeen { Lamp = l.Name, As = l.As!.Value }).ToItemList();
        if (lamps.Where(l => looks.All(s => s.Lamp != l.Name)).Select(l => l.Name).ToList() is { Count: > 0 } unseen)
        {
            return (null, $"Say what every lamp does: {string.Join(", ", unseen)} {(unseen.Count == 1 ? "is" : "are")} missing.");
        }

        var lit = looks.Count(l => l.As is SeenAs.Lit or SeenAs.Flickers);
        if (test.IsCounted && !(fields.GetValueOrDefault("all") == "lit" && (lit = test.ShouldLight) > 0) && (!int.TryParse(fields.GetValueOrDefault("lit"), NumberStyles.None, CultureInfo.InvariantCulture, out lit) || lit > house.Lamps.Count))
        {
            return (null, $"Write how many lamps are lit: 0 to {house.Lamps.Count}.");
        }

        var tested = entry with
        {
            Kind = LogKind.Test,
            Test = test.Key,
            Note = test.Leaks && fields.GetValueOrDefault("elsewhere") is { } elsewhere && !string.IsNullOrWhiteSpace(elsewhere) ? elsewhere.Trim() : entry.Note,
            Looks = looks,
            Lit = lit,
            Current = current is { } milliamperes ? Current.FromMilliamperes(milliamperes) : null,
            Voltage = volts is { } v ? Voltage.FromVolts(v) : null,
            Resistance = ohms is { } o ? Resistance.FromOhms(o) : null,
            DiodeVoltage = diode is { } d ? Voltage.FromVolts(d) : null,
            ResistanceOver = ohms is null && fields.ContainsKey("ohms-over"),
            DiodeOver = diode is null && fields.ContainsKey("diode-over"),
            Reversed = fields.ContainsKey("reversed"),
        };
        return (tested with { Passed = study.Judge(house.Building.Key, test.Key, Outcome(house, tested))!.Passed }, null);
    }

    /// <summary>What a test's entry tells its judge: a lamp that goes on and off has lost its light, unless it is made to flicker.</summary>
    /// <param name="house">The building.</param>
    /// <param name="entry">The entry.</param>
    /// <returns>What was seen and read.</returns>
    public static TestOutcome Outcome(BuildingResult house, LogEntry entry)
    {
        Seen Of(LampSeen look) => look.As switch
        {
            SeenAs.Dim => Seen.Dim,
            SeenAs.Dark => Seen.Dark,
            SeenAs.Flickers => house.Lamps.Any(l => l.Name == look.Lamp && l.Part.Kind == LampKind.Flickering) ? Seen.Lit : Seen.Dark,
            _ => Seen.Lit,
        };

        return new TestOutcome(entry.Looks.ToDictionary(l => l.Lamp, Of, StringComparer.Ordinal), entry.Looks.Count == 0 ? entry.Lit : null, entry.Current?.Amperes, entry.Voltage?.Volts) { Leak = entry.Note, OffBank = OffBank(house, entry).ToItemList() };
    }

    private static IEnumerable<OffBankReading> OffBank(BuildingResult house, LogEntry entry)
    {
        if (entry.Resistance is not null || entry.ResistanceOver)
        {
            yield return new OffBankReading(house.Building.Key, false, entry.Reversed, entry.Resistance?.Ohms);
        }

        if (entry.DiodeVoltage is not null || entry.DiodeOver)
        {
            yield return new OffBankReading(house.Building.Key, true, entry.Reversed, entry.DiodeVoltage?.Volts);
        }
    }

    // A minus sign only says that the leads are changed over.
    private static (double? Value, string? Why) Number(IReadOnlyDictionary<string, string> fields, string name, string wanted)
    {
        if (!fields.TryGetValue(name, out var text) || string.IsNullOrWhiteSpace(text))
        {
            return (null, null);
        }

        return double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && Math.Abs(value) <= MostRead
            ? (Math.Abs(value), null)
            : (null, $"“{text}” is not {wanted}.");
    }

    private static SeenAs? Look(IReadOnlyDictionary<string, string> fields, string lamp) =>
        (fields.GetValueOrDefault("all") ?? fields.GetValueOrDefault(LampField + lamp)) switch
        {
            "lit" => SeenAs.Lit,
            "dim" => SeenAs.Dim,
            "dark" => SeenAs.Dark,
            "flickers" => SeenAs.Flickers,
            _ => null,
        };
}
