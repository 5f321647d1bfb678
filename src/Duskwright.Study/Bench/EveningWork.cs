using Duskwright.Plan.Document;

namespace Duskwright.Study.Bench;

/// <summary>One kind of work of an evening, with all the houses on which it is done: mixed and set out once.</summary>
/// <param name="Words">What is done.</param>
/// <param name="From">When the first of it is begun.</param>
/// <param name="Minutes">Hands-on time in all.</param>
/// <param name="Houses">The houses by name and key, in order of time.</param>
public sealed record EveningWork(string Words, TimeOnly From, int Minutes, IReadOnlyList<(string Name, string Key)> Houses)
{
    /// <summary>What the accepted calendar has for a day and is not done.</summary>
    /// <param name="town">The town.</param>
    /// <param name="day">The day.</param>
    /// <returns>The work in order of time; empty where nothing is planned.</returns>
    public static List<EveningWork> On(Town town, DateOnly day)
    {
        var houses = town.Buildings.ToDictionary(b => b.Key, StringComparer.Ordinal);
        var words = town.Buildings.SelectMany(b => BuildSteps.All(town, b).Select(s => (Key: (b.Key, s.Key), s.Words))).ToDictionary(s => s.Key, s => s.Words);
        return [.. Left(town).Where(s => DateOnly.FromDateTime(s.Start) == day)
            .GroupBy(s => s.Step, StringComparer.Ordinal)
            .Select(g => new EveningWork(
                words.GetValueOrDefault((g.First().Building, g.Key), g.Key),
                TimeOnly.FromDateTime(g.Min(s => s.Start)),
                g.Sum(s => s.Minutes),
                [.. g.OrderBy(s => s.Start).Select(s => (houses[s.Building].Name, s.Building)).Distinct()]))
            .OrderBy(w => w.From)];
    }

    /// <summary>The steps of the accepted calendar that are not done.</summary>
    /// <param name="town">The town.</param>
    /// <returns>The steps in order of time.</returns>
    public static List<CalendarStep> Left(Town town)
    {
        var left = town.Buildings.SelectMany(b => BuildSteps.Of(town, b).Select(s => (b.Key, s.Key))).ToHashSet();
        return [.. (town.Calendar?.Steps ?? []).Where(s => left.Contains((s.Building, s.Step))).OrderBy(s => s.Start)];
    }
}
