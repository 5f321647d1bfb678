using Duskwright.Plan;

namespace Duskwright.Proposals.Sharing;

/// <summary>What hangs on one pack as a whole: a house, or all that hangs on a switch that is kept.</summary>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Switch">The switch that is kept; none for a house that is not glued.</param>
/// <param name="Houses">The keys of its houses and how many lamps each has.</param>
/// <param name="Amperes">Its current, A.</param>
/// <param name="X">Where it lies, m.</param>
/// <param name="Y">Where it lies, m.</param>
/// <param name="Pack">The pack it is to stay on; none where any will do.</param>
internal sealed record SharedUnit(string Name, string? Switch, ItemList<(string Key, int Lamps)> Houses, double Amperes, double X, double Y, string? Pack);
