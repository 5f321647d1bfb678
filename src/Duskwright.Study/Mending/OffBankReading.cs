namespace Duskwright.Study.Mending;

/// <summary>What a meter showed at the ends of a house's pair, taken off the bank, power off.</summary>
/// <param name="Building">The building's key.</param>
/// <param name="IsDiodeRange">Whether it stood on the diode range; else on resistance.</param>
/// <param name="Reversed">Whether its leads were changed over, the red one on minus.</param>
/// <param name="Value">Ω or V, zero or more; none where it showed no number.</param>
public sealed record OffBankReading(string Building, bool IsDiodeRange, bool Reversed, double? Value);
