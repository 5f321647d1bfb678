using Duskwright.Light.Colour;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>The two windows of a house whose light differs most in colour, how bright they are left aside.</summary>
/// <param name="One">A window.</param>
/// <param name="Other">Another of the same house.</param>
/// <param name="Difference">How far apart, ΔE*ab: from 2.3 it is noticed side by side, from 5 anyone sees it.</param>
public sealed record UnlikeColours(PaneResult One, PaneResult Other, Figure Difference)
{
    internal static ItemList<UnlikeColours> Of(TownStudy study) =>
        study.Buildings
            .Select(b => b.Panes.Where(p => p.Chromaticity is not null).ToList())
            .SelectMany(panes => panes.SelectMany((one, i) => panes.Skip(i + 1).Select(other => (One: one, Other: other))).OrderByDescending(Apart).Take(1))
            .Where(pair => Apart(pair) >= ColourDifference.Noticed)
            .OrderByDescending(Apart)
            .Select(pair => new UnlikeColours(pair.One, pair.Other, Figure.From(Laws.ColourApart, "colours apart", "ΔE", [.. Place("one window", pair.One), .. Place("the other", pair.Other)])))
            .ToItemList();

    private static double Apart((PaneResult One, PaneResult Other) pair) =>
        ColourDifference.Between(pair.One.Chromaticity!.Value, pair.Other.Chromaticity!.Value, ColourDifference.Lamplight);

    private static IEnumerable<Figure> Place(string which, PaneResult pane)
    {
        const string Source = "spectra of its lamps through its pane, CIE 1931 observer";
        yield return Figure.Given($"x of {which}", pane.Chromaticity!.Value.X, "", Source, Certainty.Computed);
        yield return Figure.Given($"y of {which}", pane.Chromaticity.Value.Y, "", Source, Certainty.Computed);
    }
}
