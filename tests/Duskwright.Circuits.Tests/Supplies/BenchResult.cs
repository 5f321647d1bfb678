using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Tests.Supplies;

/// <summary>What a cell gave on the bench.</summary>
/// <param name="LoadedSeconds">Time under load until the end voltage was reached, s; rests do not count.</param>
/// <param name="Coulombs">Charge drawn until then, C.</param>
/// <param name="State">The wells then.</param>
internal sealed record BenchResult(double LoadedSeconds, double Coulombs, CellState State);
