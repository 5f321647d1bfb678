using System.Text.Json;
using System.Text.Json.Serialization;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Format;

/// <summary>Quantities as plain numbers in the unit that the field's name tells; "unknown" where the field may be absent.</summary>
internal sealed class QuantityConverterFactory : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) => UnitSuffix.Of(typeToConvert) is not null && typeToConvert.IsValueType;

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options)
    {
        var quantity = Nullable.GetUnderlyingType(typeToConvert);
        var converter = quantity is null
            ? typeof(QuantityConverter<>).MakeGenericType(typeToConvert)
            : typeof(PerhapsQuantityConverter<>).MakeGenericType(quantity);
        return (JsonConverter)Activator.CreateInstance(converter)!;
    }

    private static T ReadNumber<T>(ref Utf8JsonReader reader)
        where T : struct, IQuantity<T>
    {
        // What a field allows is said in words by ValueWords, before anything is made of the document.
        return reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out var value) && double.IsFinite(value)
            ? T.FromExchange(value)
            : throw new JsonException();
    }

    private sealed class QuantityConverter<T> : JsonConverter<T>
        where T : struct, IQuantity<T>
    {
        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => ReadNumber<T>(ref reader);

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteNumberValue(value.Exchange);
    }

    private sealed class PerhapsQuantityConverter<T> : JsonConverter<T?>
        where T : struct, IQuantity<T>
    {
        public override bool HandleNull => true;

        public override T? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.Null || (reader.TokenType == JsonTokenType.String && reader.ValueTextEquals("unknown"u8))
                ? null
                : ReadNumber<T>(ref reader);

        public override void Write(Utf8JsonWriter writer, T? value, JsonSerializerOptions options)
        {
            if (value is { } known)
            {
                writer.WriteNumberValue(known.Exchange);
            }
            else
            {
                writer.WriteNullValue();
            }
        }
    }
}
