using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Results;

/// <summary>Supplies in a maker's words.</summary>
public static class SupplyWords
{
    private static readonly string[] Counts = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    /// <summary>A supply in words: "three alkaline AA (LR6)", "USB port, 5 V".</summary>
    /// <param name="supply">The supply.</param>
    /// <param name="part">Its part.</param>
    /// <returns>The words.</returns>
    public static string Of(Supply supply, SupplyPart part)
    {
        var isCell = part.Kind is SupplyKind.Alkaline or SupplyKind.NickelMetalHydride or SupplyKind.LithiumCoin;
        var name = part.Name.Replace(" cell", "", StringComparison.Ordinal);
        var count = supply.Series * supply.Parallel;
        var words = !isCell && count == 1 ? name : $"{(count < Counts.Length ? Counts[count] : count)} {name}";
        return supply.Parallel > 1 ? $"{words}, {supply.Parallel} rows side by side" : words;
    }
}
