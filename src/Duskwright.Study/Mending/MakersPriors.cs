using Duskwright.Faults.Finding;
using Duskwright.Faults.Signatures;
using Duskwright.Plan.Document;

namespace Duskwright.Study.Mending;

/// <summary>What is taken for granted of a maker's work before anything is seen.</summary>
internal static class MakersPriors
{
    // Assumed: two steps of the usual order, in which each kind is half as common as the one before it.
    private const double Apart = 4;

    internal static FaultPriors Of(Town town) => FaultPriors.Usual with
    {
        Weights = town.Breakages.Aggregate(FaultPriors.Usual.Weights, (weights, said) =>
            weights.SetItem(Kind(said.What), weights[Kind(said.What)] * (said.How == HowOften.Often ? Apart : 1 / Apart))),
    };

    private static FaultKind Kind(Breaks what) => what switch
    {
        Breaks.PairJoint => FaultKind.PairOpen,
        Breaks.PairShort => FaultKind.PairShorted,
        Breaks.PairReversed => FaultKind.PairReversed,
        Breaks.PairNicked => FaultKind.PairNicked,
        Breaks.LampJoint => FaultKind.LampJointOpen,
        Breaks.LampShort => FaultKind.LampShorted,
        Breaks.LampReversed => FaultKind.LampReversed,
        Breaks.LampDead => FaultKind.LampDead,
        Breaks.CellFlat => FaultKind.CellFlat,
        _ => throw new ArgumentOutOfRangeException(nameof(what)),
    };
}
