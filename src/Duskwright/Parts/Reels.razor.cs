using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Parts;

namespace Duskwright.Parts;

/// <summary>The reels of wire on hand, and which lead is cut from which reel so that least is wasted.</summary>
public partial class Reels
{
    private string? _wire;
    private string _left = "";

    // What is to be cut first, then what could be on hand besides.
    private IEnumerable<WirePart> Wires => Open.Study.ReelCuts.Select(w => w.Wire).Concat(Open.Town.OwnParts.Wires).Concat(Catalogue.Parts.Wires).DistinctBy(w => w.Id, StringComparer.Ordinal);

    private string NameOf(string wire) => Catalogue.FindWire(Open.Town, wire)?.Name ?? wire;

    private void Add()
    {
        var wire = _wire ?? Wires.First().Id;
        if (Open.Lengths.Read(_left) is not { Millimetres: > 0 } left)
        {
            Wrong = $"How much is left on the reel? {Open.Lengths.Example} is allowed.";
        }
        else if (Do(new CountReels(Open.Town.Reels.Append(new Reel { Wire = wire, Left = left }).ToItemList(), $"{Open.Lengths.Words(left)} of {NameOf(wire)} on hand")))
        {
            _left = "";
        }
    }

    private void Remove(int index)
    {
        var gone = Open.Town.Reels[index];
        Do(new CountReels(Open.Town.Reels.Where((_, i) => i != index).ToItemList(), $"{Open.Lengths.Words(gone.Left)} of {NameOf(gone.Wire)} no longer on hand"));
    }
}
