using Duskwright.Study.Figures;

namespace Duskwright.Study.Lists;

/// <summary>One row of the load list: what a building takes and from where.</summary>
/// <param name="Code">The building's code.</param>
/// <param name="Building">Its name.</param>
/// <param name="Lamps">How many lamps.</param>
/// <param name="Kinds">The kinds of lamps, in words.</param>
/// <param name="SwitchGroup">Its switch; none where it is not shared out.</param>
/// <param name="Supply">Its supply.</param>
/// <param name="Current">Its current with all on, A.</param>
public sealed record LoadRow(string Code, string Building, int Lamps, string Kinds, string? SwitchGroup, string? Supply, Figure? Current);
