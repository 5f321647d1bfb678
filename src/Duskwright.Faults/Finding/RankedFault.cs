using Duskwright.Faults.Signatures;

namespace Duskwright.Faults.Finding;

/// <summary>A fault with how likely it is by what was seen.</summary>
/// <param name="Fault">The fault.</param>
/// <param name="Signature">What it would show.</param>
/// <param name="Share">Its share of all single faults' likelihood, 0 to 1.</param>
/// <param name="Explains">Whether it would show just what was seen and read.</param>
public sealed record RankedFault(Fault Fault, Signature Signature, double Share, bool Explains);
