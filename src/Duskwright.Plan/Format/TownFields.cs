using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Format;

/// <summary>A town field by field, each as the exchange form writes it, for those who keep it in pieces.</summary>
public static class TownFields
{
    private static readonly JsonSerializerOptions OneLine = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The fields that say something.</summary>
    /// <param name="town">The town.</param>
    /// <returns>Each field's name in the exchange form and its value, <c>format</c> and <c>version</c> before the others.</returns>
    public static IEnumerable<(string Name, object Value)> Said(Town town) =>
        [("format", TownJson.FormatName), ("version", TownJson.Version), .. TownJsonOptions.Shared.GetTypeInfo(typeof(Town)).Properties
            .Select(p => (Property: p, Value: p.Get?.Invoke(town)))
            .Where(p => p.Value is not null && p.Property.ShouldSerialize?.Invoke(town, p.Value) != false)
            .Select(p => (p.Property.Name, p.Value!))];

    /// <summary>A value as the exchange form writes it.</summary>
    /// <param name="value">A field's value or an item of it.</param>
    /// <returns>The JSON.</returns>
    public static JsonNode Node(object value) => JsonSerializer.SerializeToNode(value, value.GetType(), TownJsonOptions.Shared)!;

    /// <summary>JSON on one line.</summary>
    /// <param name="node">The JSON.</param>
    /// <returns>Its text; only what must be escaped is.</returns>
    public static string Line(JsonNode node) => node.ToJsonString(OneLine);
}
