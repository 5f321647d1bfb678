using System.Collections.Immutable;
using Duskwright.Circuits.Networks;

namespace Duskwright.Faults.Tagging;

/// <summary>A network with the names that its maker knows: which element is which lamp, pair and pack.</summary>
/// <param name="Network">The network as it should be, without a fault.</param>
/// <param name="Lamps">The lamps.</param>
/// <param name="Pairs">The pairs of wire from the bank to a building.</param>
/// <param name="Packs">The packs and other supplies.</param>
public sealed record TaggedNetwork(
    Network Network, ImmutableArray<LampTag> Lamps, ImmutableArray<PairTag> Pairs, ImmutableArray<PackTag> Packs);
