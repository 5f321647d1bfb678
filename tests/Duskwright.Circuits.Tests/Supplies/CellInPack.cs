using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Tests.Supplies;

/// <summary>One cell of a pack, with what is left in it.</summary>
/// <param name="Law">The cell.</param>
/// <param name="State">Its wells.</param>
internal sealed record CellInPack(CellLaw Law, CellState State);
