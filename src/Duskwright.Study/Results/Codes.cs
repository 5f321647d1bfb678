using Duskwright.Plan.Document;

namespace Duskwright.Study.Results;

/// <summary>Short codes for labels, unique in the town.</summary>
internal static class Codes
{
    internal static IReadOnlyList<string> Of(Town town)
    {
        var taken = town.Buildings.Where(b => b.Code is not null).Select(b => b.Code!).ToHashSet(StringComparer.Ordinal);
        return [.. town.Buildings.Select(b => b.Code ?? Free(b.Name, taken))];
    }

    private static string Free(string name, HashSet<string> taken)
    {
        var words = Slug.Of(name).ToUpperInvariant().Split('-').Where(w => w is not ("THE" or "A" or "S")).ToList();
        return Tries(words.Count == 0 ? ["X"] : words).First(taken.Add);
    }

    private static IEnumerable<string> Tries(List<string> words)
    {
        var letters = string.Concat(words);
        var initials = words.Count > 1 ? [$"{words[0][0]}{words[1][0]}"] : Enumerable.Empty<string>();
        return initials
            .Concat(letters.Skip(1).Select(l => $"{letters[0]}{l}"))
            .Concat(Enumerable.Range(1, 999).Select(n => $"{letters[0]}{n}"));
    }
}
