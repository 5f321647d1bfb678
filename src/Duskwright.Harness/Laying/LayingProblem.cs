using System.Collections.Immutable;
using Duskwright.Harness.Routes;

namespace Duskwright.Harness.Laying;

/// <summary>Houses to be set down on a board and the wires on its surface that they may cover.</summary>
/// <param name="Houses">All houses with a place, in the order in which the maker would set them down where nothing else decides.</param>
public sealed record LayingProblem(ImmutableArray<LaidHouse> Houses);

/// <summary>A house on the board.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Footprint">The ground it covers, m; fewer than three points cover nothing.</param>
/// <param name="Stands">Whether it stands already.</param>
/// <param name="Surface">Where its pair lies on the surface, from the house to its hole, m; one point for a hole alone, none for a house without a pair. It is pulled when the house is set down.</param>
public sealed record LaidHouse(string Id, ImmutableArray<PlanePoint> Footprint, Stands Stands, ImmutableArray<PlanePoint> Surface);

/// <summary>How a house stands.</summary>
public enum Stands
{
    /// <summary>It is still to be set down; its pair is not pulled.</summary>
    ToCome,

    /// <summary>It stands with its pair pulled and can be lifted.</summary>
    Loose,

    /// <summary>It is glued.</summary>
    Glued,
}

/// <summary>An order of laying and setting down.</summary>
/// <param name="Steps">What to do, in order; every house to come is set down once.</param>
/// <param name="Knots">Houses each of which would cover the wire of the next, and how the knot is undone.</param>
/// <param name="Covered">Houses whose pair cannot be pulled because a glued one covers its way.</param>
public sealed record LayingOrder(ImmutableArray<LayingStep> Steps, ImmutableArray<LayingKnot> Knots, ImmutableArray<CoveredWay> Covered)
{
    /// <summary>Every house that stands over another's way once all stand, glued or not.</summary>
    public ImmutableArray<CoveredWay> Over { get; init; } = [];
}

/// <summary>One step.</summary>
/// <param name="Act">What is done.</param>
/// <param name="House">With which house.</param>
/// <param name="Because">The houses for whose sake it is done now.</param>
public sealed record LayingStep(LayingAct Act, string House, ImmutableArray<string> Because);

/// <summary>What can be done with a house and its pair.</summary>
public enum LayingAct
{
    /// <summary>Pull its pair and leave the house beside its place; it is set down later.</summary>
    PullFirst,

    /// <summary>Lift it from its place, its pair still through the hole.</summary>
    TakeOut,

    /// <summary>Pull its pair, where that is not done, and set it down.</summary>
    SetDown,

    /// <summary>Set it back in its place.</summary>
    PutBack,

    /// <summary>Lay a pair that several houses share and make its joints.</summary>
    LayShared,
}

/// <summary>A knot: every house covers the wire of the next, the last that of the first.</summary>
/// <param name="Houses">The houses of a shortest such round.</param>
/// <param name="PulledFirst">Those of the knot whose pair is pulled before their neighbours are set down; fewer do not undo it where the search was exact.</param>
/// <param name="Exact">Whether fewer were tried.</param>
public sealed record LayingKnot(ImmutableArray<string> Houses, ImmutableArray<string> PulledFirst, bool Exact);

/// <summary>A pair whose way is shut.</summary>
/// <param name="House">The house it feeds.</param>
/// <param name="Under">The glued house over it.</param>
public sealed record CoveredWay(string House, string Under);
