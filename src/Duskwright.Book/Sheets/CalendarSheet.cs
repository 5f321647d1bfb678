using System.Globalization;
using Duskwright.Plan.Document;
using Duskwright.Study;
using Duskwright.Study.Bench;

namespace Duskwright.Book.Sheets;

/// <summary>The accepted calendar, an evening at a time: who does what, on which houses, with a box to tick for each.</summary>
internal static class CalendarSheet
{
    private static readonly float[] Shares = [0.09f, 0.09f, 0.4f, 0.34f, 0.08f];
    private static readonly string[] Heads = ["from", "hands", "do", "on", "min"];

    internal static void Draw(PageFlow flow, TownStudy study)
    {
        var town = study.Town;
        var days = EveningRow.Days(town);
        if (days.Count == 0)
        {
            return;
        }

        flow.Page("Calendar");
        flow.Text(Face.Reports, 9, $"What is left to do, an evening at a time, from the calendar that you took. Like work stands together: mix and set out once. Tick each house; what is not ticked moves the rest.{Finish(town.Calendar!)}");
        foreach (var day in days)
        {
            flow.Gap(4);
            flow.Need(26);
            flow.Text(Face.Speaks, 12, Named(day));
            Evening(flow, town, day);
        }
    }

    internal static string Named(DateOnly day) => day.ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture);

    internal static void Evening(PageFlow flow, Town town, DateOnly day) => flow.Table(
        Shares,
        Heads,
        EveningRow.On(town, day).Select(r => new[]
        {
            r.From.ToString("HH:mm", CultureInfo.InvariantCulture), r.Hand.ToString(CultureInfo.InvariantCulture), Words(town, r),
            string.Join("   ", r.Houses.Select(h => $"[\u00A0\u00A0]\u00A0{h.Name.Replace(' ', '\u00A0')}")), r.Minutes.ToString(CultureInfo.InvariantCulture),
        }));

    // What the step was called where its house has it no longer.
    private static string Words(Town town, EveningRow row) => Step(town, row)?.Words ?? row.Step;

    internal static BenchStep? Step(Town town, EveningRow row) => BuildSteps.All(town, row.Houses[0]).FirstOrDefault(s => s.Key == row.Step);

    private static string Finish(BenchCalendar calendar) => calendar.Finish is { } finish ? $" All is done and dry on {Named(DateOnly.FromDateTime(finish))}." : "";
}
