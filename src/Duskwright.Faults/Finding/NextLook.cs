namespace Duskwright.Faults.Finding;

/// <summary>What to look at next.</summary>
/// <param name="Kind">A lamp to look at, a pack whose current to read, or a pair whose resistance to read.</param>
/// <param name="Place">Its name.</param>
/// <param name="Index">Its place among the tagged lamps or packs, or among the pairs that can be read.</param>
/// <param name="Bits">What the answer is expected to tell, in bits; one bit halves what is in question.</param>
public sealed record NextLook(LookKind Kind, string Place, int Index, double Bits);
