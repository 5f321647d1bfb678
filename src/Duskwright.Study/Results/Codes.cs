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
        words = words.Count == 0 ? ["X"] : words;
        var letters = string.Concat(words);
        var tries = new List<string>();
        if (words.Count > 1)
        {
            tries.Add($"{words[0][0]}{words[1][0]}");
        }

        tries.AddRange(letters.Skip(1).Select(l => $"{letters[0]}{l}"));
        tries.AddRange(Enumerable.Range(1, 999).Select(n => $"{letters[0]}{n}"));
        return tries.First(taken.Add);
    }
}
