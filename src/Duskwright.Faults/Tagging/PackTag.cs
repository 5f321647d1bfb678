using Duskwright.Circuits.Supplies;

namespace Duskwright.Faults.Tagging;

/// <summary>A pack or other supply of a network.</summary>
/// <param name="Name">Its name in the plan.</param>
/// <param name="Source">Its place among the network's elements; a source.</param>
/// <param name="Law">Its cells; none for a supply without cells.</param>
/// <param name="State">How full its good cells are.</param>
public sealed record PackTag(string Name, int Source, PackLaw? Law, CellState State);
