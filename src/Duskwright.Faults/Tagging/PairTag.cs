using System.Collections.Immutable;

namespace Duskwright.Faults.Tagging;

/// <summary>The pair of wires to a building.</summary>
/// <param name="Name">Its name in the plan.</param>
/// <param name="Wires">The places of its conductors among the network's elements; each a resistance.</param>
/// <param name="FarPlus">The node where its plus ends in the building.</param>
/// <param name="FarMinus">The node where its minus ends in the building.</param>
/// <param name="Lamps">The lamps that turn round with it, by their place among the tagged lamps.</param>
public sealed record PairTag(string Name, ImmutableArray<int> Wires, int FarPlus, int FarMinus, ImmutableArray<int> Lamps);
