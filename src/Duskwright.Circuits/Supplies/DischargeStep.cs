using System.Collections.Immutable;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Supplies;

/// <summary>One step of a discharge.</summary>
/// <param name="LitSeconds">Time lit so far, s; two steps share it at the end of a day, before and after the rest.</param>
/// <param name="Solution">Voltages and currents then.</param>
/// <param name="Packs">The wells of each pack's cells then.</param>
public sealed record DischargeStep(double LitSeconds, Solution Solution, ImmutableArray<CellState> Packs);
