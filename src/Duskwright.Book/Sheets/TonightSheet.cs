using System.Globalization;
using Duskwright.Study;

namespace Duskwright.Book.Sheets;

/// <summary>One evening's work: what to set out, what to mind, who does what; the sheets and labels of its houses follow it.</summary>
internal static class TonightSheet
{
    internal static void Draw(PageFlow flow, TownStudy study, DateOnly day)
    {
        var rows = EveningRow.On(study.Town, day);
        if (rows.Count == 0)
        {
            return;
        }

        flow.Page($"Tonight, {CalendarSheet.Named(day)}");
        flow.Text(Face.Reports, 9, "The sheets of these houses and their labels follow. Tick on the phone or here, and carry it over.");
        flow.Gap(3);
        CalendarSheet.Evening(flow, study.Town, day);
        var steps = rows.Select(r => CalendarSheet.Step(study.Town, r)).OfType<Study.Bench.BenchStep>().ToList();
        List(flow, "Set out", steps.SelectMany(s => s.Materials), "[  ]  ");
        List(flow, "Mind", steps.Select(s => s.Caution).OfType<string>());
        List(flow, "Wet at the end", steps.Where(s => s.DryMinutes > 0).Select(s => $"{s.Words}: {(s.DryMinutes >= 90 ? string.Create(CultureInfo.InvariantCulture, $"{s.DryMinutes / 60.0:0.#} h") : $"{s.DryMinutes} min")} to dry"));
    }

    /// <summary>The keys of the houses worked on.</summary>
    internal static IReadOnlySet<string> Houses(TownStudy study, DateOnly day) =>
        EveningRow.On(study.Town, day).SelectMany(r => r.Houses).Select(h => h.Key).ToHashSet(StringComparer.Ordinal);

    private static void List(PageFlow flow, string heading, IEnumerable<string> lines, string box = "")
    {
        var each = lines.Distinct(StringComparer.Ordinal).ToList();
        if (each.Count == 0)
        {
            return;
        }

        flow.Gap(4);
        flow.Need(16);
        flow.Text(Face.Speaks, 12, heading);
        foreach (var line in each)
        {
            flow.Text(Face.Reports, 9.5f, $"{box}{line}");
        }
    }
}
