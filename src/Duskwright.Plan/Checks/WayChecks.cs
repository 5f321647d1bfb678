using Duskwright.Plan.Document;

namespace Duskwright.Plan.Checks;

/// <summary>Steps of the maker's own.</summary>
internal static class WayChecks
{
    private const int MostMinutes = 24 * 60;
    private const int MostDryMinutes = 60 * 24 * 60;
    private const int MostLetters = 200;

    internal static IEnumerable<Problem> Of(Town town)
    {
        foreach (var problem in town.Buildings.SelectMany((b, i) => Of(b.Way, $"buildings[{i}].way", b.Name, b.DescribedLamps().Any() ? b.DescribedLamps().Count() : b.Leds ?? 0)).Concat(town.Ways.SelectMany((w, i) => Of(w.Way, $"ways[{i}].way", w.Name, null))))
        {
            yield return problem;
        }

        for (var i = 0; i < town.Ways.Count; i++)
        {
            if (town.Ways.Take(i).Any(w => w.Name == town.Ways[i].Name))
            {
                yield return new Problem($"ways[{i}].name", "twice", $"Two ways of building are called {town.Ways[i].Name}.", "Call one of them something else.");
            }
        }
    }

    private static IEnumerable<Problem> Of(BuildWay? way, string path, string whose, int? lamps)
    {
        if (way is null)
        {
            yield break;
        }

        var steps = way.Changed.Select((c, i) => (Path: $"{path}.changed[{i}]", Words: c.Words ?? c.Step, Minutes: c.Minutes ?? 1, Dry: c.DryMinutes ?? 0))
            .Concat(way.Added.Select((a, i) => (Path: $"{path}.added[{i}]", a.Words, a.Minutes, Dry: a.DryMinutes)));
        foreach (var step in steps)
        {
            if (step.Words.Trim().Length is 0 or > MostLetters)
            {
                yield return new Problem($"{step.Path}.words", "words", $"A step of {whose} has {step.Words.Trim().Length} letters; 1 to {MostLetters} are allowed.", "Say in a few words what is done.");
            }

            if (step.Minutes is < 1 or > MostMinutes)
            {
                yield return new Problem($"{step.Path}.minutes", "minutes", $"“{step.Words}” of {whose} takes {step.Minutes} min; 1 to {MostMinutes} are allowed.", "Write the time your hands need; drying is told by itself.");
            }

            if (step.Dry is < 0 or > MostDryMinutes)
            {
                yield return new Problem($"{step.Path}.dry_minutes", "minutes", $"“{step.Words}” of {whose} dries for {step.Dry} min; 0 to {MostDryMinutes} are allowed.", "Write how long it dries, 0 for nothing wet.");
            }
        }

        foreach (var (test, at) in way.Added.Select((a, i) => (a.Test, $"{path}.added[{i}].test")).Where(t => t.Item1 is not null))
        {
            if (test!.Words.Trim().Length is 0 or > MostLetters)
            {
                yield return new Problem($"{at}.words", "words", $"A test of {whose} has {test.Words.Trim().Length} letters; 1 to {MostLetters} are allowed.", "Say in a few words what to touch to what.");
            }

            if (test.Lit < 0 || test.Lit > lamps)
            {
                yield return new Problem($"{at}.lit", "lamps", $"“{test.Words}” of {whose} wants {test.Lit} lamps to light; {(lamps is null ? "0 or more are allowed" : $"the house has {lamps}")}.", "Write how many of its lamps must light, or leave it open for all of them.");
            }
        }

        if (way.Added.Select(a => a.Key).Concat(way.Changed.Select(c => c.Step)).GroupBy(k => k, StringComparer.Ordinal).FirstOrDefault(g => g.Skip(1).Any()) is { Key: var twice })
        {
            yield return new Problem(path, "twice", $"The step {twice} stands twice in the way {whose} is built.", "Say it once.");
        }
    }
}
