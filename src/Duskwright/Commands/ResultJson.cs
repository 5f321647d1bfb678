using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Unicode;
using Duskwright.Study.Figures;

namespace Duskwright.Commands;

/// <summary>Results as JSON for other programs: figures with their unit, range, formula, inputs and source.</summary>
internal static class ResultJson
{
    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
        Converters = { new FigureConverter(), new JsonStringEnumConverter(JsonNamingPolicy.SnakeCaseLower) },
    };

    internal static void Print(object result) => Console.Out.WriteLine(JsonSerializer.Serialize(result, Options));

    private sealed class FigureConverter : JsonConverter<Figure>
    {
        public override Figure Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            throw new NotSupportedException("Figures are computed, not read.");

        public override void Write(Utf8JsonWriter writer, Figure value, JsonSerializerOptions options)
        {
            writer.WriteStartObject();
            writer.WriteString("name", value.Name);
            writer.WriteNumber("value", value.Value);
            writer.WriteString("unit", value.Unit);
            if (value is { Low: { } low, High: { } high })
            {
                writer.WriteNumber("low", low);
                writer.WriteNumber("high", high);
            }

            if (value.Law is { } law)
            {
                writer.WriteString("formula", law.Words);
                writer.WritePropertyName("inputs");
                JsonSerializer.Serialize(writer, value.Inputs, options);
            }

            writer.WriteString("source", value.Source);
            writer.WritePropertyName("certainty");
            JsonSerializer.Serialize(writer, value.Certainty, options);
            writer.WriteEndObject();
        }
    }
}
