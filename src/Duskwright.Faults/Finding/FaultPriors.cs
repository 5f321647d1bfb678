using System.Collections.Immutable;
using Duskwright.Faults.Signatures;

namespace Duskwright.Faults.Finding;

/// <summary>What is taken for granted before anything is seen; a maker who knows better changes it.</summary>
/// <remarks>
/// The order open joint, short, reversed, dead LED is common practice, no source; that each is half as common as the one before it is
/// assumed. A flat cell is taken to be as common as an open joint, a nicked wire as a dead LED, assumed. So are the other shares here.
/// </remarks>
public sealed record FaultPriors
{
    /// <summary>The usual ones.</summary>
    public static FaultPriors Usual { get; } = new();

    /// <summary>How common each kind of fault is at one place, against the others.</summary>
    public ImmutableDictionary<FaultKind, double> Weights { get; init; } = ImmutableDictionary.CreateRange(new Dictionary<FaultKind, double>
    {
        [FaultKind.PairOpen] = 8,
        [FaultKind.LampJointOpen] = 8,
        [FaultKind.CellFlat] = 8,
        [FaultKind.PairShorted] = 4,
        [FaultKind.LampShorted] = 4,
        [FaultKind.PairReversed] = 2,
        [FaultKind.LampReversed] = 2,
        [FaultKind.LampDead] = 1,
        [FaultKind.PairNicked] = 1,
    });

    /// <summary>How often nothing is wrong although somebody looks, 0 to 1.</summary>
    public double Healthy { get; init; } = 0.1;

    /// <summary>How often two things are wrong at once, 0 to 1.</summary>
    public double Two { get; init; } = 0.1;

    /// <summary>How often a lamp is told as it is not, 0 to 1; either of the other two looks then. One in fifty is assumed.</summary>
    public double Misread { get; init; } = 0.02;

    /// <summary>Minutes to look at one lamp.</summary>
    public double LookMinutes { get; init; } = 0.2;

    /// <summary>Minutes to read a pack: one to two (common practice, no source).</summary>
    public double ReadMinutes { get; init; } = 1.5;

    /// <summary>Minutes to undo a pair at the bank, read it and join it again: a joint two to three, a reading one to two (common practice, no source).</summary>
    public double PairMinutes { get; init; } = 4;
}
