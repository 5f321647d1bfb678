using Duskwright.Study.Figures;

namespace Duskwright.Study.Lists;

/// <summary>One row of the cut list: a lead to cut.</summary>
/// <param name="Label">What to write on it: "CH A1".</param>
/// <param name="For">What it is: "pair, Chandlery to the bank".</param>
/// <param name="Wire">The wire's name.</param>
/// <param name="Conductors">How many conductors of that length.</param>
/// <param name="Length">Length of each, m.</param>
/// <param name="Laid">Whether it is laid already and not to be cut.</param>
public sealed record CutRow(string Label, string For, string Wire, int Conductors, Figure Length, bool Laid);
