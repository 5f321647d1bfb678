using System.Collections.Immutable;
using Duskwright.Faults.Signatures;

namespace Duskwright.Faults.Finding;

/// <summary>The faults that may be behind what was seen.</summary>
/// <param name="Faults">Every single fault, the likeliest first; their shares are among single faults.</param>
/// <param name="Next">The look that tells most for its minutes; none when no look would tell them further apart.</param>
public sealed record FaultRanking(ImmutableArray<RankedFault> Faults, NextLook? Next)
{
    /// <summary>The look that tells most for its minutes without a meter; none when no lamp that is not looked at yet would tell.</summary>
    public NextLook? NextByEye { get; init; }

    /// <summary>How likely it is that nothing is wrong and something was told wrongly, 0 to 1.</summary>
    public required double Healthy { get; init; }

    /// <summary>How likely it is that there is just one fault, 0 to 1; times a fault's share it is how likely that fault is.</summary>
    public required double OneFault { get; init; }

    /// <summary>Two faults at once, the likeliest first.</summary>
    public required ImmutableArray<RankedPair> Pairs { get; init; }

    /// <summary>Whether any single fault would show just what was seen and read. If none does, there is no fault or more than one.</summary>
    public bool OneFaultExplains => Faults.Any(f => f.Explains);
}

/// <summary>Two faults at once.</summary>
/// <param name="One">One of them.</param>
/// <param name="Other">The other, at another place.</param>
/// <param name="Probability">How likely it is that these two and no others are there, 0 to 1.</param>
public sealed record RankedPair(Fault One, Fault Other, double Probability);
