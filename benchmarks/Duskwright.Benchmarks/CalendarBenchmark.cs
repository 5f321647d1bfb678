using System.Diagnostics;
using System.Globalization;
using Duskwright.Calendar.Jobs;
using Duskwright.Calendar.Scheduling;
using Spectre.Console;

namespace Duskwright.Benchmarks;

/// <summary>Published scheduling problems, and our own towns.</summary>
internal static class CalendarBenchmark
{
    private const double MostSeconds = 10;
    private const double LeastShare = 0.95;

    internal static int Run(string? instances)
    {
        if (instances is null || !Directory.Exists(instances))
        {
            AnsiConsole.WriteLine($"Skipped the published problems: there is no folder {instances ?? "given (--instances DIR)"}.");
            return 0;
        }

        return Published(instances) ? 0 : 1;
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

    private static string Text(int minutes) => minutes.ToString(CultureInfo.InvariantCulture);
}
