using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Lists;
using Duskwright.Proposals;
using Duskwright.Study;

namespace Duskwright.Towns;

/// <summary>What comes of typed lines: a town with packs and switches, or what keeps it from being one.</summary>
/// <param name="Study">Everything computed; none where a line cannot be read.</param>
/// <param name="Problems">What cannot be read, each with its line.</param>
/// <param name="Assumptions">What was assumed.</param>
public sealed record TypedPlan(TownStudy? Study, ItemList<Problem> Problems, ItemList<string> Assumptions)
{
    /// <summary>Reads typed lines and gives them packs and switches.</summary>
    /// <param name="text">The lines.</param>
    /// <param name="lengths">The unit of lengths for which none is said; millimetres where nobody has chosen.</param>
    /// <returns>What comes out; problems and assumptions in the order of the lines.</returns>
    public static TypedPlan Of(string text, LengthRule? lengths = null) => Of(BuildingList.Read(text, (lengths ?? LengthRule.All[0]).Unit));

    /// <summary>Gives a list that was read packs and switches.</summary>
    /// <param name="read">The list.</param>
    /// <returns>What comes out.</returns>
    public static TypedPlan Of(ListResult read) =>
        new(read.Town is { } town ? TownStudy.Of(StartingPlan.Of(town)) : null, read.Problems, read.Assumptions);
}
