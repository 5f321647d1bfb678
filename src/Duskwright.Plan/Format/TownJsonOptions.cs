using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using System.Text.Unicode;

namespace Duskwright.Plan.Format;

/// <summary>How the town's records become JSON.</summary>
internal static class TownJsonOptions
{
    internal static JsonSerializerOptions Shared { get; } = Made();

    private static JsonSerializerOptions Made()
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
            WriteIndented = true,
            NewLine = "\n",
            Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
            TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { UnitSuffix.Append, Unsaid.LeaveOut } },
            Converters =
            {
                new QuantityConverterFactory(),
                new ItemListConverterFactory(),
                new ResistorChoiceConverter(),
                new JsonStringEnumConverter(JsonNamingPolicy.SnakeCaseLower, allowIntegerValues: false),
            },
        };
        options.MakeReadOnly();
        return options;
    }
}
