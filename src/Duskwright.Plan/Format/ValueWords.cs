using System.Text.Json;
using System.Text.Json.Nodes;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Format;

/// <summary>Whether a single value fits its field, and in words what would.</summary>
internal static class ValueWords
{
    /// <summary>What the field allows, where the value is not that; none where it fits.</summary>
    internal static string? WhyNot(JsonNode? node, Type type)
    {
        if (node is JsonValue value && Fits(value, type))
        {
            return null;
        }

        var plain = Nullable.GetUnderlyingType(type) ?? type;
        return plain switch
        {
            _ when plain == typeof(ResistorChoice) => "a number of ohms above 0, \"none\" or \"unknown\"",
            _ when UnitSuffix.Of(plain) is { } suffix => $"a plain number{(suffix.Length > 0 ? $" in {suffix.TrimStart('_')}" : "")}{(plain == type ? "" : " or \"unknown\"")}",
            _ when plain == typeof(string) => "text between quotes",
            _ when plain == typeof(bool) => "true or false",
            _ when plain == typeof(int) => "a whole number",
            _ when plain == typeof(double) => "a plain number",
            _ when plain == typeof(DateOnly) => "a day such as \"2026-03-07\"",
            _ when plain == typeof(TimeOnly) => "a time of day such as \"19:30:00\"",
            _ when plain == typeof(DateTime) => "a day and time such as \"2026-03-07T19:30:00\"",
            _ when plain.IsEnum => $"one of {string.Join(", ", Enum.GetNames(plain).Select(JsonNamingPolicy.SnakeCaseLower.ConvertName))}",
            _ => throw new InvalidOperationException($"A field of {plain.Name} has no words yet."),
        };
    }

    private static bool Fits(JsonValue value, Type type)
    {
        try
        {
            // 1e999 is a number to JSON and infinite to us.
            return value.Deserialize(type, TownJsonOptions.Shared) is not (null or double.PositiveInfinity or double.NegativeInfinity)
                || UnitSuffix.Of(type) is not null;
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
