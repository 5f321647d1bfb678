using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Format;

/// <summary>Finds, all at once, fields that a town does not have, fields that it lacks, and values that are not of their field's kind.</summary>
internal static class FieldChecks
{
    internal static ItemList<Problem> Of(JsonObject document)
    {
        var problems = new List<Problem>();
        Walk(document, typeof(Town), "", problems);
        return problems.ToItemList();
    }

    private static void Walk(JsonNode? node, Type type, string path, List<Problem> problems)
    {
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ItemList<>))
        {
            WalkList(node, type.GetGenericArguments()[0], path, problems);
            return;
        }

        var info = TownJsonOptions.Shared.GetTypeInfo(Nullable.GetUnderlyingType(type) ?? type);
        if (info.Kind != JsonTypeInfoKind.Object)
        {
            if (ValueWords.WhyNot(node, type) is { } expected)
            {
                problems.Add(new Problem(path, "wrong-value", $"{LastName(path)} is {Shown(node)}; {expected} is allowed.", "Compare it with the examples or with the schema."));
            }

            return;
        }

        if (node is JsonObject fields)
        {
            WalkFields(fields, info, path, problems);
        }
        else
        {
            problems.Add(new Problem(path, "wrong-value", $"{LastName(path)} is {Shown(node)}; fields between {{ and }} are allowed.", "Compare it with the examples or with the schema."));
        }
    }

    private static void WalkList(JsonNode? node, Type item, string path, List<Problem> problems)
    {
        if (node is not JsonArray list)
        {
            problems.Add(new Problem(path, "wrong-value", $"{LastName(path)} is {Shown(node)}; a list between [ and ] is allowed.", "Put [ before it and ] behind it."));
            return;
        }

        for (var i = 0; i < list.Count; i++)
        {
            Walk(list[i], item, $"{path}[{i}]", problems);
        }
    }

    private static void WalkFields(JsonObject fields, JsonTypeInfo info, string path, List<Problem> problems)
    {
        var known = info.Properties.Where(p => p.Get is not null).ToDictionary(p => p.Name, StringComparer.Ordinal);
        foreach (var (name, value) in fields)
        {
            var here = path.Length == 0 ? name : $"{path}.{name}";
            if (!known.TryGetValue(name, out var property))
            {
                problems.Add(Unknown(name, here, [.. known.Keys]));
            }
            else if (value is not null || property.IsRequired)
            {
                // A null says nothing, as if the field were left out.
                Walk(value, property.PropertyType, here, problems);
            }
        }

        foreach (var missing in info.Properties.Where(p => p.IsRequired && !fields.ContainsKey(p.Name)))
        {
            problems.Add(new Problem(
                path.Length == 0 ? missing.Name : $"{path}.{missing.Name}",
                "field-missing",
                $"{(path.Length == 0 ? "The town" : path)} has no \"{missing.Name}\", which it needs.",
                $"Add \"{missing.Name}\"."));
        }
    }

    private static string LastName(string path) => path[(path.LastIndexOf('.') + 1)..];

    private static string Shown(JsonNode? node) => node switch
    {
        null => "null",
        JsonArray => "a list",
        JsonObject => "a group of fields",
        _ when node.ToJsonString(TownJsonOptions.Shared) is { Length: > 40 } text => $"{text[..40]}…",
        _ => node.ToJsonString(TownJsonOptions.Shared),
    };

    private static Problem Unknown(string name, string path, IReadOnlyCollection<string> known)
    {
        var stem = Stem(name);
        if (known.FirstOrDefault(k => k != stem && Stem(k) == stem && UnitOf(k).Length > 0) is { } otherUnit)
        {
            return new Problem(path, "wrong-unit", $"\"{name}\" is not written in a unit that is read here; it is \"{otherUnit}\".", $"Turn the value into {UnitOf(otherUnit).TrimStart('_')} and call it \"{otherUnit}\".");
        }

        var nearest = known.MinBy(k => Distance(k, name))!;
        return Distance(nearest, name) <= 3
            ? new Problem(path, "unknown-field", $"There is no field \"{name}\" here; \"{nearest}\" may have been meant.", $"Write \"{nearest}\", or take it out.")
            : new Problem(path, "unknown-field", $"There is no field \"{name}\" here.", $"Take it out; known here are {string.Join(", ", known.Order(StringComparer.Ordinal))}.");
    }

    private static string Stem(string name) => UnitOf(name) is { Length: > 0 } unit ? name[..^unit.Length] : name;

    private static string UnitOf(string name)
    {
        var at = name.LastIndexOf('_');
        return at > 0 && name[at..] is "_mm" or "_cm" or "_m" or "_in" or "_inch" or "_inches" or "_ft" or "_v" or "_mv" or "_ma" or "_a" or "_ohm" or "_ohms"
            or "_kohm" or "_w" or "_mw" or "_ah" or "_mah" or "_h" or "_hours" or "_min" or "_s" or "_lx" or "_lux" or "_mcd" or "_cd" or "_deg" or "_rad" or "_price"
            ? name[at..]
            : "";
    }

    // Levenshtein's distance, by rows.
    private static int Distance(string one, string other)
    {
        var row = Enumerable.Range(0, other.Length + 1).ToArray();
        for (var i = 1; i <= one.Length; i++)
        {
            var corner = row[0]++;
            for (var j = 1; j <= other.Length; j++)
            {
                var above = row[j];
                row[j] = Math.Min(Math.Min(row[j] + 1, row[j - 1] + 1), corner + (one[i - 1] == other[j - 1] ? 0 : 1));
                corner = above;
            }
        }

        return row[^1];
    }
}
