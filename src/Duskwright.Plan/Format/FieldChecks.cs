using System.Collections.Concurrent;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Format;

/// <summary>Finds, all at once, fields that a town does not have, fields that it lacks, and values that are not of their field's kind.</summary>
internal static class FieldChecks
{
    // A large town has thousands of things of a few dozen types.
    private static readonly ConcurrentDictionary<Type, Form> Forms = [];

    internal static ItemList<Problem> Of(JsonObject document)
    {
        var problems = new List<Problem>();
        Walk(document, typeof(Town), "", problems);
        return problems.ToItemList();
    }

    private static void Walk(JsonNode? node, Type type, string path, List<Problem> problems)
    {
        var form = Forms.GetOrAdd(type, Form.Of);
        if (form.Item is not null)
        {
            WalkList(node, form.Item, path, problems);
        }
        else if (form.Fields is null)
        {
            if (ValueWords.WhyNot(node, type) is { } expected)
            {
                problems.Add(new Problem(path, "wrong-value", $"{LastName(path)} is {Shown(node)}; {expected} is allowed.", "Compare it with the examples or with the schema."));
            }
        }
        else if (node is JsonObject fields)
        {
            WalkFields(fields, form, path, problems);
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

    private static void WalkFields(JsonObject fields, Form form, string path, List<Problem> problems)
    {
        var known = form.Fields!;
        var guessed = new List<string?>();
        foreach (var (name, value) in fields)
        {
            var here = path.Length == 0 ? name : $"{path}.{name}";
            if (!known.TryGetValue(name, out var property))
            {
                var meant = Meant(name, known.Keys);
                problems.Add(Unknown(name, meant, here, known.Keys));
                guessed.Add(meant);
            }
            else if (value is not null || property.IsRequired)
            {
                // A null says nothing, as if the field were left out.
                Walk(value, property.PropertyType, here, problems);
            }
        }

        foreach (var missing in form.Required.Where(p => !fields.ContainsKey(p.Name) && !guessed.Contains(p.Name)))
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

    /// <summary>The field of the same name and another unit, or else one that differs by three letters at most.</summary>
    private static string? Meant(string name, IReadOnlyCollection<string> known)
    {
        if (known.FirstOrDefault(k => UnitOf(k).Length > 0 && Stem(k) == Stem(name)) is { } otherUnit)
        {
            return otherUnit;
        }

        var nearest = known.MinBy(k => Distance(k, name))!;
        return Distance(nearest, name) <= 3 ? nearest : null;
    }

    private static Problem Unknown(string name, string? meant, string path, IReadOnlyCollection<string> known)
    {
        if (meant is null)
        {
            return new Problem(path, "unknown-field", $"There is no field \"{name}\" here.", $"Take it out; known here are {string.Join(", ", known.Order(StringComparer.Ordinal))}.");
        }

        if (UnitOf(meant).Length == 0 || Stem(meant) != Stem(name))
        {
            return new Problem(path, "unknown-field", $"There is no field \"{name}\" here; \"{meant}\" may have been meant.", $"Write \"{meant}\", or take it out.");
        }

        var unit = UnitOf(meant).TrimStart('_');
        return UnitOf(name).Length == 0
            ? new Problem(path, "wrong-unit", $"\"{name}\" does not tell its unit; it is \"{meant}\".", $"Write the value in {unit} and call it \"{meant}\".")
            : new Problem(path, "wrong-unit", $"\"{name}\" is not written in a unit that is read here; it is \"{meant}\".", $"Turn the value into {unit} and call it \"{meant}\".");
    }

    private static string Stem(string name) => UnitOf(name) is { Length: > 0 } unit ? name[..^unit.Length] : name;

    private static string UnitOf(string name)
    {
        var at = name.LastIndexOf('_');
        return at > 0 && name[at..] is "_mm" or "_cm" or "_m" or "_in" or "_inch" or "_inches" or "_ft" or "_v" or "_mv" or "_ma" or "_a" or "_ohm" or "_ohms"
            or "_kohm" or "_w" or "_mw" or "_ah" or "_mah" or "_h" or "_hours" or "_min" or "_s" or "_lx" or "_lux" or "_mcd" or "_cd" or "_deg" or "_rad"
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

    /// <summary>What is allowed in the place of a value of a type: the items of a list, or fields by name, or neither.</summary>
    private sealed record Form(Type? Item, Dictionary<string, JsonPropertyInfo>? Fields, List<JsonPropertyInfo> Required)
    {
        internal static Form Of(Type type)
        {
            if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ItemList<>))
            {
                return new(type.GetGenericArguments()[0], null, []);
            }

            var info = TownJsonOptions.Shared.GetTypeInfo(Nullable.GetUnderlyingType(type) ?? type);
            return info.Kind == JsonTypeInfoKind.Object
                ? new(null, info.Properties.Where(p => p.Get is not null).ToDictionary(p => p.Name, StringComparer.Ordinal), [.. info.Properties.Where(p => p.IsRequired)])
                : new(null, null, []);
        }
    }
}
