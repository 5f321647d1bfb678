using Duskwright.Plan;
using Duskwright.Plan.Parts;

namespace Duskwright.Proposals.Wiring;

/// <summary>Wires a shared pair may be made of: the usual one and thicker ones.</summary>
internal static class TrunkWires
{
    /// <summary>The usual wire and then every wire that loses less, thinner ones first; one that another beats in both is left out.</summary>
    internal static ItemList<WirePart> From(WirePart usual, IEnumerable<WirePart> all)
    {
        var wires = new List<WirePart> { usual };
        foreach (var wire in all.OrderBy(w => w.OuterDiameter.Metres).ThenBy(w => w.PerMetre.Ohms))
        {
            if (wire.PerMetre.Ohms < wires[^1].PerMetre.Ohms && wire.OuterDiameter.Metres > usual.OuterDiameter.Metres)
            {
                wires.Add(wire);
            }
        }

        return wires.ToItemList();
    }
}
