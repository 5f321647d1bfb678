namespace Duskwright.Faults.Signatures;

/// <summary>A fault and what it shows.</summary>
/// <param name="Fault">The fault.</param>
/// <param name="Signature">What it shows.</param>
public sealed record FaultSignature(Fault Fault, Signature Signature);
