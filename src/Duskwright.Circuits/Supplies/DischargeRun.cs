using System.Collections.Immutable;

namespace Duskwright.Circuits.Supplies;

/// <summary>A discharge.</summary>
/// <param name="Steps">Its steps, the first at the start.</param>
public sealed record DischargeRun(ImmutableArray<DischargeStep> Steps);
