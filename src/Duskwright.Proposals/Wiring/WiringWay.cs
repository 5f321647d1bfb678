using Duskwright.Harness.Feeds;
using Duskwright.Plan;
using Duskwright.Plan.Parts;

namespace Duskwright.Proposals.Wiring;

/// <summary>A whole town wired: every switch in one of the three ways.</summary>
/// <param name="Groups">The switches, in the order of the document.</param>
/// <param name="Holes">How many pairs go through each feed hole, and the drill that lets them through.</param>
public sealed record WiringWay(ItemList<GroupWiring> Groups, ItemList<HoleUse> Holes)
{
    /// <summary>Wire to cut, both conductors, m.</summary>
    public double WireMetres => Groups.Sum(g => g.WireMetres);

    /// <summary>Wire to cut by size, the thinnest first.</summary>
    public ItemList<WireLength> BySize => Groups
        .SelectMany(g => g.Tree.Pieces.Zip(g.WireOf, (piece, wire) => (Wire: wire, Metres: 2 * piece.Metres)))
        .GroupBy(x => x.Wire)
        .OrderBy(g => g.Key.CopperDiameter.Metres)
        .Select(g => new WireLength(g.Key, g.Sum(x => x.Metres)))
        .ToItemList();

    /// <summary>Joints to be made.</summary>
    public int Joints => Groups.Sum(g => g.Joints);

    /// <summary>Joints nobody can reach once the town stands.</summary>
    public int OutOfReach => Groups.Sum(g => g.OutOfReach);

    /// <summary>The switch that loses the most on the way to a house; none in a town without switches.</summary>
    public GroupWiring? WorstDrop => Groups.MaxBy(g => g.WorstDropVolts);

    /// <summary>The switch with the faintest lamp against its like.</summary>
    public GroupWiring? Faintest => Groups.MinBy(g => g.Evenness);

    /// <summary>The switch on which one broken joint darkens the most lamps.</summary>
    public GroupWiring? WorstBreak => Groups.MaxBy(g => g.Darkened);

    /// <summary>The way of each switch in words: "a pair to each house".</summary>
    /// <param name="way">The way.</param>
    /// <returns>The words.</returns>
    public static string Words(FeedWay way) => way switch
    {
        FeedWay.Trunk => "a shared trunk with taps",
        FeedWay.Chain => "one pair from house to house",
        _ => "a pair of its own to each house",
    };
}

/// <summary>Wire of one size.</summary>
/// <param name="Wire">The wire.</param>
/// <param name="Metres">How much of it, one conductor, m.</param>
public sealed record WireLength(WirePart Wire, double Metres);

/// <summary>What goes through a feed hole.</summary>
/// <param name="Hole">The hole's id.</param>
/// <param name="Pairs">How many pairs.</param>
/// <param name="DrillMillimetres">The drill that lets them through.</param>
/// <param name="TooTight">Whether the hole as drilled is narrower.</param>
public sealed record HoleUse(string Hole, int Pairs, double DrillMillimetres, bool TooTight);
