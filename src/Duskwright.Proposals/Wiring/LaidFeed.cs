using Duskwright.Harness.Feeds;
using Duskwright.Plan;
using Duskwright.Plan.Parts;

namespace Duskwright.Proposals.Wiring;

/// <summary>The pairs of a switch, those that are given last, and the wire of each of these.</summary>
internal sealed record LaidFeed(FeedTree Tree, ItemList<WirePart> GivenWires)
{
    internal int Free => Tree.Pieces.Length - GivenWires.Count;
}
