using System.Globalization;
using System.Text.Json.Nodes;
using Duskwright.Plan;

namespace Duskwright.Store.History;

/// <summary>Two states of a town compared, down to the single field.</summary>
internal static class Differences
{
    /// <summary>Names what differs.</summary>
    /// <param name="before">The pieces of the one.</param>
    /// <param name="after">The pieces of the other.</param>
    /// <returns>The differences in order of path.</returns>
    internal static ItemList<Difference> Between(IReadOnlyDictionary<string, string> before, IReadOnlyDictionary<string, string> after) =>
        EntityChange.Between(before, after)
            .OrderBy(c => c.Path, StringComparer.Ordinal)
            .SelectMany(c => Within(c.Path, "", Parsed(c.Before), Parsed(c.After)))
            .ToItemList();

    private static IEnumerable<Difference> Within(string thing, string field, JsonNode? was, JsonNode? now)
    {
        if (was is JsonObject before && now is JsonObject after)
        {
            return before.Select(f => f.Key).Union(after.Select(f => f.Key))
                .SelectMany(name => Within(thing, field.Length == 0 ? name : $"{field}.{name}", before[name], after[name]));
        }

        if (was is JsonArray first && now is JsonArray second && first.Count == second.Count && first.Any(i => i is JsonObject))
        {
            return Enumerable.Range(0, first.Count)
                .SelectMany(i => Within(thing, string.Create(CultureInfo.InvariantCulture, $"{field}[{i + 1}]"), first[i], second[i]));
        }

        return JsonNode.DeepEquals(was, now) ? [] : [new Difference(thing, field, Words(was), Words(now))];
    }

    private static JsonNode? Parsed(string? json) => json is null ? null : JsonNode.Parse(json);

    private static string? Words(JsonNode? value) => value is JsonValue single ? single.ToString() : value?.ToJsonString();
}
