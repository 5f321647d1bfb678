using System.Text.Json.Serialization.Metadata;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Format;

/// <summary>Puts the unit into the name of every field that holds a quantity: <c>width_mm</c>.</summary>
internal static class UnitSuffix
{
    internal static void Append(JsonTypeInfo type)
    {
        foreach (var property in type.Properties)
        {
            if (Of(property.PropertyType) is { } suffix)
            {
                property.Name += suffix;
            }
        }
    }

    /// <summary>The suffix of a type of quantity; none for any other type.</summary>
    internal static string? Of(Type type)
    {
        var quantity = Nullable.GetUnderlyingType(type) ?? type;
        if (quantity == typeof(ResistorChoice))
        {
            return Resistance.FieldSuffix;
        }

        return quantity.IsValueType && quantity.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IQuantity<>))
            ? (string)quantity.GetProperty(nameof(IQuantity<Length>.FieldSuffix))!.GetValue(null)!
            : null;
    }
}
