namespace Duskwright.Faults.Finding;

/// <summary>What a meter showed at the ends of a pair taken off the bank, power off.</summary>
/// <param name="Range">The range it was set to.</param>
/// <param name="Reversed">Whether its leads were changed over, the red one on minus.</param>
/// <param name="Value">What it showed, Ω or V, zero or more; none where it showed no number.</param>
public sealed record PairReading(PairRange Range, bool Reversed, double? Value);

/// <summary>A range of a meter for parts without power.</summary>
public enum PairRange
{
    /// <summary>Resistance, Ω.</summary>
    Ohms,

    /// <summary>The volts over a diode that the meter lights itself, V.</summary>
    Diode,
}
