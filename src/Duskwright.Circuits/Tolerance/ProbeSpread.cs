using Duskwright.Circuits.Fitting;

namespace Duskwright.Circuits.Tolerance;

/// <summary>What will be read at a test point.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Value">V or A.</param>
public sealed record ProbeSpread(string Name, Estimate Value);
