using System.Collections;
using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;

namespace Duskwright.Store.History;

/// <summary>A document cut into its pieces, so that a revision keeps only those that changed.</summary>
/// <remarks>
/// <c>show</c> is a field of the document; <c>buildings/the-drowned-bell</c> an item of a list; <c>buildings/</c> the order of its items.
/// The value is the piece's JSON exactly as the exchange form writes it, <c>format</c> and <c>version</c> among them: a piece of an
/// older version comes back with its version, and the reader brings it up.
/// </remarks>
internal static class Entities
{
    // What an item is called by, the first that it has.
    private static readonly string[] Names = ["id", "name", "building", "date"];

    // An edit changes few items and leaves the others the same objects; what one is as text never changes, for none of them can.
    private static readonly ConditionalWeakTable<object, Item> Known = [];

    /// <summary>Cuts a town into pieces.</summary>
    /// <param name="town">The town.</param>
    /// <returns>The pieces by path, in order of path.</returns>
    internal static SortedDictionary<string, string> Of(Town town)
    {
        var pieces = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var (field, value) in TownFields.Said(town))
        {
            var items = value is IEnumerable list and not string ? list.Cast<object>().Select(i => Known.GetValue(i, Item.Of)).ToList() : [];
            if (items.Count > 0 && items.TrueForAll(i => i.IsObject))
            {
                var keys = Keys(items);
                pieces[$"{field}/"] = Text(new JsonArray([.. keys.Select(k => JsonValue.Create(k))]));
                foreach (var (key, item) in keys.Zip(items))
                {
                    pieces[ItemPath(field, key)] = item.Text;
                }
            }
            else
            {
                pieces[field] = Text(TownFields.Node(value));
            }
        }

        return pieces;
    }

    /// <summary>Puts a town together from its pieces.</summary>
    /// <param name="pieces">All pieces by path.</param>
    /// <returns>The town, or what keeps it from being one.</returns>
    internal static TownReadResult Town(IReadOnlyDictionary<string, string> pieces)
    {
        var text = new StringBuilder("{");
        foreach (var (path, value) in pieces)
        {
            var slash = path.IndexOf('/', StringComparison.Ordinal);
            if (slash < 0)
            {
                text.Append(text.Length > 1 ? "," : "").Append('"').Append(path).Append("\":").Append(value);
            }
            else if (slash == path.Length - 1)
            {
                var field = path[..slash];
                var items = JsonSerializer.Deserialize<string[]>(value)!.Select(key => pieces.GetValueOrDefault(ItemPath(field, key), "null"));
                text.Append(text.Length > 1 ? "," : "").Append('"').Append(field).Append("\":[").AppendJoin(',', items).Append(']');
            }
        }

        return TownJson.Read(text.Append('}').ToString());
    }

    /// <summary>Reads the piece that holds the town's name.</summary>
    /// <param name="value">The piece.</param>
    /// <returns>The name; none where the piece holds none.</returns>
    internal static string? Name(string value)
    {
        try
        {
            return JsonSerializer.Deserialize<string>(value);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>A mark of all pieces, to know them again.</summary>
    /// <param name="pieces">The pieces in order of path.</param>
    /// <returns>SHA-256 over paths and values.</returns>
    internal static byte[] Mark(SortedDictionary<string, string> pieces)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var (path, value) in pieces)
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"{path}\n{value}\n"));
        }

        return hash.GetHashAndReset();
    }

    private static List<string> Keys(List<Item> items)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        var next = new Dictionary<string, int>(StringComparer.Ordinal);
        var keys = new List<string>(items.Count);
        foreach (var item in items)
        {
            var key = item.Called;
            while (!taken.Add(key))
            {
                next[item.Called] = next.GetValueOrDefault(item.Called, 1) + 1;
                key = $"{item.Called}~{next[item.Called]}";
            }

            keys.Add(key);
        }

        return keys;
    }

    // Escaped as JSON text is, so that no character of a name can end a path or a line.
    private static string ItemPath(string field, string key) => $"{field}/{Text(JsonValue.Create(key))[1..^1]}";

    private static string Text(JsonNode node) => TownFields.Line(node);

    /// <summary>An item of a list as text, and what it is called by.</summary>
    private sealed record Item(string Called, string Text, bool IsObject)
    {
        internal static Item Of(object value)
        {
            var node = TownFields.Node(value);
            var called = node is JsonObject item ? Names.Select(n => item[n]).OfType<JsonValue>().Select(v => v.ToString()).FirstOrDefault(n => n.Length > 0) : null;
            return new Item(called ?? "item", TownFields.Line(node), node is JsonObject);
        }
    }
}
