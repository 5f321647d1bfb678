using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>A way of building kept under a name for other houses, in place of one that had the name.</summary>
/// <param name="Kept">The way and its name.</param>
public sealed record KeepWay(NamedWay Kept) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => $"Keep the steps as {Kept.Name}";

    /// <inheritdoc/>
    public override Town Apply(Town town) => town with { Ways = town.Ways.Where(w => w.Name != Kept.Name).Append(Kept).ToItemList() };
}
