using System.Text.Json;
using System.Text.Json.Serialization;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Format;

/// <summary>A resistor as its ohms, or the words "none" or "unknown".</summary>
internal sealed class ResistorChoiceConverter : JsonConverter<ResistorChoice>
{
    public override ResistorChoice Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out var ohms) && ohms > 0 && double.IsFinite(ohms))
        {
            return ResistorChoice.Of(Resistance.FromOhms(ohms));
        }

        if (reader.TokenType == JsonTokenType.String && reader.ValueTextEquals("none"u8))
        {
            return ResistorChoice.None;
        }

        return reader.TokenType == JsonTokenType.String && reader.ValueTextEquals("unknown"u8)
            ? ResistorChoice.Unknown
            : throw new JsonException();
    }

    public override void Write(Utf8JsonWriter writer, ResistorChoice value, JsonSerializerOptions options)
    {
        if (value.Value is { } resistance)
        {
            writer.WriteNumberValue(resistance.Ohms);
        }
        else
        {
            writer.WriteStringValue(value.IsUnknown ? "unknown" : "none");
        }
    }
}
