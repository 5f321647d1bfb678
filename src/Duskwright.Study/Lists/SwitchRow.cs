using Duskwright.Plan;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Lists;

/// <summary>One row of the switch list: what a switch lights.</summary>
/// <param name="Id">The label of the switch.</param>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Supply">The supply it takes from.</param>
/// <param name="Buildings">The names of the buildings it lights.</param>
/// <param name="Lamps">How many lamps.</param>
/// <param name="Current">What a meter should read at the switch with this switch alone on, A.</param>
/// <param name="Scenes">The names of the scenes it is on in.</param>
public sealed record SwitchRow(string Id, string? Name, string? Supply, ItemList<string> Buildings, int Lamps, Figure? Current, ItemList<string> Scenes);
