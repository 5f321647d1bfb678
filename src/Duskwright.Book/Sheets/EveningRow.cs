using Duskwright.Plan.Document;
using Duskwright.Study.Bench;

namespace Duskwright.Book.Sheets;

/// <summary>What one pair of hands does in one evening: a kind of work and its houses, set out once.</summary>
/// <param name="Hand">Which pair of hands, from 1.</param>
/// <param name="From">When the first of it is begun.</param>
/// <param name="Step">The step's key.</param>
/// <param name="Minutes">Hands-on time in all.</param>
/// <param name="Houses">The houses in order of time.</param>
internal sealed record EveningRow(int Hand, TimeOnly From, string Step, int Minutes, IReadOnlyList<Building> Houses)
{
    /// <summary>The days for which the accepted calendar has work that is not done.</summary>
    internal static IReadOnlyList<DateOnly> Days(Town town) => [.. EveningWork.Left(town).Select(s => DateOnly.FromDateTime(s.Start)).Distinct()];

    /// <summary>What is left of one day.</summary>
    internal static IReadOnlyList<EveningRow> On(Town town, DateOnly day)
    {
        var houses = town.Buildings.ToDictionary(b => b.Key, StringComparer.Ordinal);
        return [.. Hands(EveningWork.Left(town).Where(s => DateOnly.FromDateTime(s.Start) == day))
            .GroupBy(s => (s.Hand, s.Step.Step))
            .Select(g => new EveningRow(g.Key.Hand, TimeOnly.FromDateTime(g.First().Step.Start), g.Key.Step, g.Sum(s => s.Step.Minutes), [.. g.Select(s => houses[s.Step.Building]).Distinct()]))
            .OrderBy(r => r.From).ThenBy(r => r.Hand)];
    }

    // Whoever is free first takes the next step, so that nobody does two things at once.
    private static IEnumerable<(int Hand, CalendarStep Step)> Hands(IEnumerable<CalendarStep> steps)
    {
        var free = new List<DateTime>();
        foreach (var step in steps.OrderBy(s => s.Start).ThenBy(s => s.Building, StringComparer.Ordinal))
        {
            var hand = free.FindIndex(f => f <= step.Start);
            if (hand < 0)
            {
                (hand, free) = (free.Count, [.. free, default]);
            }

            free[hand] = step.Start.AddMinutes(step.Minutes);
            yield return (hand + 1, step);
        }
    }
}
