using Duskwright.Plan;

namespace Duskwright.Study.Mending;

/// <summary>What came out of a test. Everything may be left out but what was seen.</summary>
/// <param name="Looks">Lamps by their names within the building, as they were seen; one that is left out was not looked at.</param>
/// <param name="Lit">How many were lit, where they were counted and not looked at one by one.</param>
/// <param name="Amperes">What a meter in line with the house alone read, A; none without a meter. While lamps flicker, the mean.</param>
/// <param name="Volts">What it read between the supply's ends under that load, V.</param>
public sealed record TestOutcome(IReadOnlyDictionary<string, Seen> Looks, int? Lit = null, double? Amperes = null, double? Volts = null)
{
    /// <summary>Where light showed that should not, in the maker's words; none where only the windows glow, or where nobody looked.</summary>
    public string? Leak { get; init; }

    /// <summary>What it showed at the pair's ends off the supply.</summary>
    public ItemList<OffBankReading> OffBank { get; init; } = [];
}
