using System.Text.Json;
using System.Text.Json.Serialization;

namespace Duskwright.Plan.Format;

/// <summary>Item lists as JSON arrays.</summary>
internal sealed class ItemListConverterFactory : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) =>
        typeToConvert.IsGenericType && typeToConvert.GetGenericTypeDefinition() == typeof(ItemList<>);

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(ItemListConverter<>).MakeGenericType(typeToConvert.GetGenericArguments()))!;

    private sealed class ItemListConverter<T> : JsonConverter<ItemList<T>>
    {
        public override ItemList<T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.StartArray
                ? JsonSerializer.Deserialize<List<T>>(ref reader, options)!.ToItemList()
                : throw new JsonException();

        public override void Write(Utf8JsonWriter writer, ItemList<T> value, JsonSerializerOptions options)
        {
            writer.WriteStartArray();
            foreach (var item in value)
            {
                JsonSerializer.Serialize(writer, item, options);
            }

            writer.WriteEndArray();
        }
    }
}
