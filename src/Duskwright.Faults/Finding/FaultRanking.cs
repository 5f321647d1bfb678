using System.Collections.Immutable;

namespace Duskwright.Faults.Finding;

/// <summary>The faults that may be behind what was seen.</summary>
/// <param name="Faults">Every single fault, the likeliest first.</param>
/// <param name="Next">The look that tells most; none when no look would tell them further apart.</param>
public sealed record FaultRanking(ImmutableArray<RankedFault> Faults, NextLook? Next)
{
    /// <summary>Whether any single fault would show just what was seen and read. If none does, there is no fault or more than one.</summary>
    public bool OneFaultExplains => Faults.Any(f => f.Explains);
}
