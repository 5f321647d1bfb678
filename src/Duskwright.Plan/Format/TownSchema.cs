using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Format;

/// <summary>The town document's JSON Schema.</summary>
public static class TownSchema
{
    /// <summary>The schema as indented JSON.</summary>
    public static string Json { get; } = Made();

    private static string Made()
    {
        var exported = TownJsonOptions.Shared.GetJsonSchemaAsNode(typeof(Town), new JsonSchemaExporterOptions
        {
            TreatNullObliviousAsNonNullable = true,
            TransformSchemaNode = Described,
        }).AsObject();
        var properties = new JsonObject
        {
            ["format"] = new JsonObject { ["const"] = TownJson.FormatName },
            ["version"] = new JsonObject { ["const"] = TownJson.Version },
        };
        var fields = exported["properties"]!.AsObject();
        foreach (var (name, value) in fields.ToList())
        {
            fields.Remove(name);
            properties[name] = value;
        }

        return new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Duskwright town",
            ["description"] = "A miniature town and its lighting. The unit of every quantity is the ending of the name of its field: mm, v, ma, ohm, w, ah, h, lx, mcd, deg.",
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = new JsonArray("format", "version", "name"),
            ["additionalProperties"] = false,
        }.ToJsonString(TownJsonOptions.Shared) + "\n";
    }

    private static JsonNode Described(JsonSchemaExporterContext context, JsonNode schema)
    {
        var type = context.TypeInfo.Type;
        if (type == typeof(ResistorChoice))
        {
            return new JsonObject
            {
                ["description"] = "Ohms, or none, or unknown.",
                ["anyOf"] = new JsonArray(
                    new JsonObject { ["type"] = "number", ["exclusiveMinimum"] = 0 },
                    new JsonObject { ["enum"] = new JsonArray("none", "unknown") }),
            };
        }

        if (UnitSuffix.Of(type) is { } suffix)
        {
            var unit = suffix.Length > 0 ? $"In {suffix.TrimStart('_')}." : "In your own money.";
            return Nullable.GetUnderlyingType(type) is null
                ? new JsonObject { ["description"] = unit, ["type"] = "number" }
                : new JsonObject { ["description"] = unit, ["anyOf"] = new JsonArray(new JsonObject { ["type"] = "number" }, new JsonObject { ["enum"] = new JsonArray("unknown", null) }) };
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ItemList<>))
        {
            return new JsonObject
            {
                ["type"] = "array",
                ["items"] = TownJsonOptions.Shared.GetJsonSchemaAsNode(type.GetGenericArguments()[0], new JsonSchemaExporterOptions
                {
                    TreatNullObliviousAsNonNullable = true,
                    TransformSchemaNode = Described,
                }),
            };
        }

        return schema;
    }
}
