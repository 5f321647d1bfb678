using System.Collections;
using System.Text.Json.Serialization.Metadata;

namespace Duskwright.Plan.Format;

/// <summary>Leaves out of the document what says nothing: empty lists, parts that are all default, values that are the default.</summary>
internal static class Unsaid
{
    internal static void LeaveOut(JsonTypeInfo type)
    {
        if (type.Kind != JsonTypeInfoKind.Object)
        {
            return;
        }

        object? plain = null;
        foreach (var property in type.Properties)
        {
            if (property.IsRequired || property.Get is not { } get)
            {
                continue;
            }

            // Required members cannot be left unset by hand, so the plain object is made without running initialisers' checks.
            plain ??= Plain(type.Type);
            var unsaid = plain is null ? null : get(plain);
            property.ShouldSerialize = (_, value) => value is not (null or ICollection { Count: 0 }) && !IsEmpty(value) && !value.Equals(unsaid);
        }
    }

    private static object? Plain(Type type) =>
        type.GetConstructor(Type.EmptyTypes) is { } maker ? maker.Invoke(null) : null;

    private static bool IsEmpty(object value) => value is IEnumerable items and not string && !items.GetEnumerator().MoveNext();
}
