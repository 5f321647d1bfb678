using Duskwright.Plan;

namespace Duskwright.Study.Results;

/// <summary>The pairs of one switch, some of them shared: a tree whose junction 0 is the switch.</summary>
/// <param name="SwitchGroup">The switch group's id.</param>
/// <param name="Pairs">Its pairs, each after the one that feeds it.</param>
/// <param name="Houses">The junction each building with lamps on the switch hangs at.</param>
public sealed record SwitchFeed(string SwitchGroup, ItemList<FeedPair> Pairs, ItemList<FeedHouse> Houses)
{
    /// <summary>The minus wire that the houses share; their pairs are then plus wires alone. None where each pair has its own.</summary>
    public SharedReturn? Return { get; init; }
}

/// <summary>One minus wire for several houses: a tree whose junction 0 is the bank.</summary>
/// <param name="Wires">Its single wires, each after the one nearer the bank.</param>
/// <param name="Houses">The junction each building's minus hangs at.</param>
public sealed record SharedReturn(ItemList<FeedPair> Wires, ItemList<FeedHouse> Houses);

/// <summary>A pair of a feed.</summary>
/// <param name="From">The junction nearer the switch.</param>
/// <param name="To">The junction it feeds.</param>
/// <param name="Metres">Its length, m.</param>
/// <param name="Wire">The id of its wire.</param>
public sealed record FeedPair(int From, int To, double Metres, string Wire);

/// <summary>A building of a feed.</summary>
/// <param name="Building">Its key.</param>
/// <param name="Junction">The junction its lamps hang at.</param>
public sealed record FeedHouse(string Building, int Junction);

/// <summary>A building as another feed would have it, all switches on and cells as full as they are said to be.</summary>
/// <param name="Building">Its key.</param>
/// <param name="SwitchGroup">The switch group that feeds these lamps.</param>
/// <param name="Lamps">How many lamps it has on that switch.</param>
/// <param name="DropVolts">Volts lost from the switch to the house and back.</param>
/// <param name="Evenness">Its faintest lamp there against the brightest of the same part on the same supply, as lightness L*.</param>
public sealed record FedBuilding(string Building, string SwitchGroup, int Lamps, double DropVolts, double Evenness);
