using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>What the maker says of the resistor in a lamp's lead: a value, none, or "don't know".</summary>
/// <remarks>Saying nothing at all (a null) leaves the choice to the tool, which proposes a preferred value.</remarks>
public sealed record ResistorChoice
{
    private ResistorChoice()
    {
    }

    /// <summary>The lamp hangs on the pack with nothing between.</summary>
    public static ResistorChoice None { get; } = new();

    /// <summary>Built in and not known.</summary>
    public static ResistorChoice Unknown { get; } = new() { IsUnknown = true };

    /// <summary>The value, where one is named.</summary>
    public Resistance? Value { get; private init; }

    /// <summary>Whether it is not known.</summary>
    public bool IsUnknown { get; private init; }

    /// <summary>Whether there is no resistor.</summary>
    public bool IsNone => Value is null && !IsUnknown;

    /// <summary>A resistor of a named value.</summary>
    /// <param name="value">More than zero.</param>
    /// <returns>The choice.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is zero or less.</exception>
    public static ResistorChoice Of(Resistance value) =>
        value.Ohms > 0
            ? new() { Value = value }
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A resistor has more than 0 Ω; say none instead.");
}
