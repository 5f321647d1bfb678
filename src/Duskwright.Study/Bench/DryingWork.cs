using Duskwright.Plan.Document;

namespace Duskwright.Study.Bench;

/// <summary>What dries after a step of the accepted calendar, and what is to be done meanwhile.</summary>
/// <param name="Name">The house.</param>
/// <param name="Key">Its key.</param>
/// <param name="Words">What was done.</param>
/// <param name="DryAt">When it is dry.</param>
/// <param name="Meanwhile">The steps that are begun after it and before it is dry, in order of time: house, its key and what is done.</param>
public sealed record DryingWork(string Name, string Key, string Words, DateTime DryAt, IReadOnlyList<(string Name, string Key, string Words, DateTime Start)> Meanwhile)
{
    /// <summary>What is set to dry on a day, with the work that fills the wait.</summary>
    /// <param name="town">The town.</param>
    /// <param name="day">The day.</param>
    /// <returns>In order of time; empty where nothing that is left of the day dries.</returns>
    public static List<DryingWork> On(Town town, DateOnly day)
    {
        var names = town.Buildings.ToDictionary(b => b.Key, b => b.Name, StringComparer.Ordinal);
        var steps = town.Buildings.SelectMany(b => BuildSteps.All(town, b).Select(s => (Key: (b.Key, s.Key), Step: s))).ToDictionary(s => s.Key, s => s.Step);
        var left = EveningWork.Left(town);
        return
        [
            .. left.Where(s => DateOnly.FromDateTime(s.Start) == day)
                .Select(s => (Done: s, Step: steps[(s.Building, s.Step)], End: s.Start.AddMinutes(s.Minutes)))
                .Where(s => s.Step.DryMinutes > 0 && !left.Any(o => o.Building == s.Done.Building && o.Step == s.Done.Step && o.Start > s.Done.Start))
                .Select(s => new DryingWork(names[s.Done.Building], s.Done.Building, s.Step.Words, s.End.AddMinutes(s.Step.DryMinutes),
                    [.. left.Where(o => o.Start >= s.End && o.Start < s.End.AddMinutes(s.Step.DryMinutes)).Select(o => (names[o.Building], o.Building, steps[(o.Building, o.Step)].Words, o.Start))])),
        ];
    }
}
