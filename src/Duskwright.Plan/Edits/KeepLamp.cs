using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Plan.Edits;

/// <summary>A lamp of the maker's own, kept among the town's parts; one of the same id is replaced.</summary>
/// <param name="Lamp">The lamp.</param>
public sealed record KeepLamp(LampPart Lamp) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => $"A lamp of your own: {Lamp.Name}";

    /// <inheritdoc/>
    public override Town Apply(Town town) => town with { OwnParts = town.OwnParts with { Lamps = town.OwnParts.Lamps.Where(l => l.Id != Lamp.Id).Append(Lamp).ToItemList() } };
}
