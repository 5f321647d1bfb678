using System.Collections.Immutable;
using Duskwright.Circuits.Fitting;

namespace Duskwright.Circuits.Tolerance;

/// <summary>What parts as they are sold make of a circuit.</summary>
/// <param name="Draws">Circuits drawn and solved.</param>
/// <param name="LampAmps">Current of each lamp, A, in the order of the lamps among the elements.</param>
/// <param name="Neighbours">Evenness, in the order asked for.</param>
/// <param name="Probes">Test points, in the order asked for.</param>
public sealed record ToleranceResult(
    int Draws, ImmutableArray<Estimate> LampAmps, ImmutableArray<NeighbourSpread> Neighbours, ImmutableArray<ProbeSpread> Probes);
