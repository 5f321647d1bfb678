using Duskwright.Plan;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Mending;

/// <summary>What a test's result says.</summary>
/// <param name="Passed">Whether all that was seen and read is as sound parts can give it.</param>
/// <param name="Words">Why, in a sentence: "L2 is dark.", "5.1 mA is below 5.6 mA, the least that sound parts give.".</param>
/// <param name="Band">The band in which the reading had to lie, at the volts read and after the last sound reading where there are any, A; none where nothing was read or to be read.</param>
/// <param name="Causes">Where it did not pass: what may be wrong, the likeliest first; those that look alike together.</param>
/// <param name="Doubt">Where it passed and yet cannot tell all well from one lamp out: what would; none where it is sure.</param>
public sealed record TestVerdict(bool Passed, string Words, Figure? Band, ItemList<FaultSuspect> Causes, string? Doubt)
{
    /// <summary>Where it did not pass and no cause can be reckoned: where to begin looking, in a sentence; none otherwise.</summary>
    public string? LookFirst { get; init; }
}
