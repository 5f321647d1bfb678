namespace Duskwright.Parts;

/// <summary>A mark on a dial.</summary>
/// <param name="At">Where, on the dial's own scale.</param>
/// <param name="Words">What is written there.</param>
public sealed record Tick(double At, string Words);
