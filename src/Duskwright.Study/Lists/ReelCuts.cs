using Duskwright.Plan;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Lists;

/// <summary>Which lead is cut from which reel of one wire, so that least is wasted.</summary>
/// <param name="Wire">The wire.</param>
/// <param name="Reels">The reels in the order in which they are cut: those on hand first.</param>
/// <param name="Words">How many reels it takes, and whether fewer would do.</param>
/// <param name="TooLong">Leads that no reel holds in one piece, in words; each says what to do.</param>
public sealed record WireCuts(WirePart Wire, ItemList<ReelCuts> Reels, string Words, ItemList<string> TooLong);

/// <summary>One reel and its cuts.</summary>
/// <param name="Name">Which reel: "reel on hand, 12 m" or "new reel 1, 25 m".</param>
/// <param name="IsNew">Whether it is to be bought.</param>
/// <param name="Millimetres">What it holds before the first cut.</param>
/// <param name="Cuts">The leads cut from it, in the order of the cut list.</param>
/// <param name="LeftMillimetres">What is left of it.</param>
public sealed record ReelCuts(string Name, bool IsNew, int Millimetres, ItemList<ReelCut> Cuts, int LeftMillimetres);

/// <summary>A lead cut from a reel.</summary>
/// <param name="Row">Its row of the cut list.</param>
/// <param name="Conductors">Which of its conductors: both, or plus or minus alone.</param>
/// <param name="LeftMillimetres">What is left on the reel after it.</param>
public sealed record ReelCut(CutRow Row, CutConductors Conductors, int LeftMillimetres);

/// <summary>Which conductors of a pair are cut.</summary>
public enum CutConductors
{
    /// <summary>Plus and minus, one after the other.</summary>
    Both,

    /// <summary>The positive one alone.</summary>
    Plus,

    /// <summary>The other one alone.</summary>
    Minus,
}
