using Duskwright.Plan;
using Duskwright.Study.Results;

namespace Duskwright.Proposals.Tiles;

/// <summary>A tile and what it carries of one supply.</summary>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Buildings">The keys of the buildings on it with lamps on the supply.</param>
/// <param name="Lamps">How many lamps they have.</param>
/// <param name="AloneAmps">Its current alone at the socket with fresh contacts, A.</param>
public sealed record TileLoad(string Name, ItemList<string> Buildings, int Lamps, double AloneAmps);

/// <summary>A way the tiles are plugged, computed.</summary>
/// <param name="Into">For each tile the index of the one it plugs into, or −1 for the socket.</param>
/// <param name="Worst">The index of the tile with the lamp that loses the most light.</param>
/// <param name="LightShare">That lamp's light as a share of its own with its tile alone at the socket and fresh contacts.</param>
/// <param name="LostVolts">The most that is lost from the socket to a tile and back, V.</param>
/// <param name="Amps">The current through the socket, A.</param>
/// <param name="Darkened">How many lamps the worst unplugging darkens, those of the tile itself included.</param>
public sealed record TileArrangement(ItemList<int> Into, int Worst, double LightShare, double LostVolts, double Amps, int Darkened)
{
    /// <summary>That light as lightness L*; 95 and more is not seen to be fainter.</summary>
    public double Lightness => BusBuilding.Lightness(LightShare);
}
