namespace Duskwright.Circuits.Supplies;

/// <summary>A pack and the source that stands for it.</summary>
/// <param name="SourceName">Name of the source in the network.</param>
/// <param name="Law">The pack.</param>
/// <param name="Start">The wells of each cell at the start.</param>
public sealed record PackOnNetwork(string SourceName, PackLaw Law, CellState Start);
