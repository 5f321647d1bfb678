using System.Collections.Immutable;
using Duskwright.Faults.Signatures;

namespace Duskwright.Faults.Finding;

/// <summary>How well sound parts, and each fault behind a pair, agree with what a meter showed at its ends off the bank.</summary>
/// <param name="Sound">Likelihood with all well behind the pair, in the unit of the readings.</param>
/// <param name="Faulty">Likelihood with each fault behind it, by kind and place.</param>
public sealed record PairFinding(double Sound, ImmutableDictionary<(FaultKind Kind, string Place), double> Faulty)
{
    /// <summary>How much better than sound parts a fault agrees.</summary>
    /// <param name="fault">A fault anywhere.</param>
    /// <returns>A ratio; 1 for one that is not behind this pair.</returns>
    public double Of(Fault fault) => Faulty.TryGetValue((fault.Kind, fault.Place), out var likelihood) ? likelihood / Sound : 1;

    /// <summary>Whether some fault behind the pair agrees so much better that sound parts are not to be believed.</summary>
    public bool Condemns => Faulty.Values.DefaultIfEmpty(0).Max() > Sound / LeastRatio;

    /// <summary>Whether a fault anywhere agrees about as well as any.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>False where another, or none at all, agrees ten times as well.</returns>
    public bool Allows(Fault fault) => Of(fault) > LeastRatio * Math.Max(1, Faulty.Values.DefaultIfEmpty(0).Max() / Sound);

    // Ten to one; assumed.
    private const double LeastRatio = 0.1;
}
