using Duskwright.Harness.Feeds;
using Duskwright.Plan;
using Duskwright.Plan.Parts;

namespace Duskwright.Proposals.Wiring;

/// <summary>One switch wired in one way, computed.</summary>
/// <param name="SwitchGroup">The switch group's id.</param>
/// <param name="Tree">Its pairs.</param>
/// <param name="WireOf">The wire of each pair, in the order of the tree's pieces.</param>
/// <param name="Joints">Joints to be made, on both conductors.</param>
/// <param name="OutOfReach">How many of them nobody can reach once the town stands.</param>
/// <param name="WorstDropVolts">The most that is lost from the switch to a house and back, V.</param>
/// <param name="WorstDropAt">The name of that house.</param>
/// <param name="Evenness">The faintest lamp on the switch against the brightest of its kind on the pack, as lightness L*.</param>
/// <param name="Darkened">How many lamps one broken joint darkens at worst.</param>
/// <param name="Lamps">How many lamps it lights.</param>
public sealed record GroupWiring(
    string SwitchGroup, FeedTree Tree, ItemList<WirePart> WireOf, int Joints, int OutOfReach, double WorstDropVolts, string WorstDropAt, double Evenness, int Darkened, int Lamps)
{
    /// <summary>Wire to cut, both conductors, m.</summary>
    public double WireMetres => 2 * Tree.Metres;

    /// <summary>How much shorter wiring of this kind could be at the very most, as a share.</summary>
    public double Gap => Tree.Metres == 0 ? 0 : 1 - (Tree.AtLeastMetres / Tree.Metres);

    /// <summary>The first house each pair feeds, by key, in the order of the tree's pieces: its circuit is the pair's.</summary>
    public ItemList<string> FirstFed => Tree.Pieces.Select((_, i) => Tree.Beyond(i)[0]).ToItemList();
}
