using Duskwright.Study.Figures;

namespace Duskwright.Study.Lists;

/// <summary>One row of the parts list.</summary>
/// <param name="Part">What to buy.</param>
/// <param name="Use">What it is for.</param>
/// <param name="Needed">How many pieces, or metres of wire, the town takes.</param>
/// <param name="Spares">How many more to have to spare.</param>
/// <param name="Packs">How many packs to buy.</param>
/// <param name="PackWords">What a pack is: "bag of 100", "reel of 25 m".</param>
/// <param name="Cost">What they cost at usual prices; none where no price is known.</param>
public sealed record PartsRow(string Part, string Use, double Needed, double Spares, int Packs, string PackWords, Figure? Cost);
