namespace Duskwright.Circuits.Supplies;

/// <summary>One cell of a pack, with what is left in it.</summary>
/// <param name="Law">The cell.</param>
/// <param name="State">Its wells.</param>
public sealed record CellInPack(CellLaw Law, CellState State);
