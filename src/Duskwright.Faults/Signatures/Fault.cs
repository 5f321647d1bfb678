namespace Duskwright.Faults.Signatures;

/// <summary>One fault at one place.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Place">Name of the lamp, pair or pack.</param>
/// <param name="Index">Its place among the tagged lamps, pairs or packs.</param>
public sealed record Fault(FaultKind Kind, string Place, int Index);
