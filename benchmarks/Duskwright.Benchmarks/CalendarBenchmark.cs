using System.Diagnostics;
using System.Globalization;
using Duskwright.Calendar.Jobs;
using Duskwright.Calendar.Scheduling;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Proposals;
using Spectre.Console;

namespace Duskwright.Benchmarks;

/// <summary>Published scheduling problems, and our own towns.</summary>
internal static class CalendarBenchmark
{
    private const double MostSeconds = 10;
    private const double LeastShare = 0.95;
    private const int MostOfBound = 3;
    private static readonly DateOnly FirstDay = new(2026, 3, 2);
    private static readonly WeeklySession[] Sessions = [new() { Day = DayOfWeek.Tuesday, From = new TimeOnly(19, 0), Minutes = 120 }, new() { Day = DayOfWeek.Thursday, From = new TimeOnly(19, 0), Minutes = 120 }, new() { Day = DayOfWeek.Saturday, From = new TimeOnly(10, 0), Minutes = 300 }];

    internal static int Run(string? instances)
    {
        var towns = Towns();
        if (instances is null || !Directory.Exists(instances))
        {
            AnsiConsole.WriteLine($"Skipped the published problems: there is no folder {instances ?? "given (--instances DIR)"}.");
            return towns ? 0 : 1;
        }

        return Published(instances) && towns ? 0 : 1;
    }

    private static bool Towns()
    {
        var table = new Table().Title("Our own towns; two evenings of 2 h and a Saturday of 5 h a week, one pair of hands").AddColumns("town", "steps", "done and dry", "not before", "gap, days", "half built at once (bound)", "evenings of half-built houses (bound)", "seconds", "holds");
        var saltmarrow = TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"))).Town!;
        Town Street(int houses) => new() { Name = $"{houses} houses", Buildings = Enumerable.Range(1, houses).Select(n => new Building { Name = $"House {n}", Leds = 1 + (n * 7 % 4) }).ToItemList() };
        var holds = true;
        foreach (var town in new[] { saltmarrow, Street(200), Street(500) })
        {
            var start = Stopwatch.GetTimestamp();
            var calendar = CalendarProposal.Of(town, FirstDay, Sessions);
            var seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
            var sound = calendar.Why is null && calendar.FinishAtEarliest <= calendar.Finish && calendar.HalfBuilt <= MostOfBound * calendar.HalfBuiltBound;
            holds &= sound;
            table.AddRow(town.Name, Text(calendar.Steps.Count), Day(calendar.Finish), Day(calendar.FinishAtEarliest), (calendar.Finish - calendar.FinishAtEarliest).TotalDays.ToString("0.0", CultureInfo.InvariantCulture), $"{Text(calendar.HalfBuilt)} ({Text(calendar.HalfBuiltBound)})", $"{Text(calendar.HalfBuiltEvenings)} ({Text(calendar.HalfBuiltEveningsBound)})", seconds.ToString("0.0", CultureInfo.InvariantCulture), sound ? "yes" : "NO");
        }

        AnsiConsole.Write(table);
        return holds;
    }

    private static bool Published(string folder)
    {
        var table = new Table().AddColumns("instance", "published", "ours", "bound", "seconds", "holds");
        var (held, count) = (0, 0);
        _ = BuildSchedule.Plan(new BuildWork([new Job("start-up", 1)], [], []));
        foreach (var (name, work, published) in CalendarInstances.All(folder))
        {
            var start = Stopwatch.GetTimestamp();
            var schedule = BuildSchedule.Plan(work);
            var seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
            var holds = seconds <= MostSeconds && (published is { } finish
                ? schedule.Status == ScheduleStatus.Earliest && schedule.Finish == finish
                : schedule.Status == ScheduleStatus.Impossible);
            (held, count) = (held + (holds ? 1 : 0), count + 1);
            table.AddRow(name, published?.ToString(CultureInfo.InvariantCulture) ?? "none", schedule.Why is null ? Text(schedule.Finish) : $"{schedule.Status}", Text(schedule.FinishBound), seconds.ToString("0.00", CultureInfo.InvariantCulture), holds ? "yes" : "NO");
            if (schedule.Why is { } why)
            {
                AnsiConsole.WriteLine($"{name}: {why}");
            }
        }

        AnsiConsole.Write(table);
        AnsiConsole.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{held} of {count} reached and proven within {MostSeconds} s each; the goal is {LeastShare:P0}."));
        return held >= LeastShare * count;
    }

    private static string Day(DateTime time) => time.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Text(int minutes) => minutes.ToString(CultureInfo.InvariantCulture);
}
