using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>The places people look from, said anew.</summary>
/// <param name="Views">All places after the change.</param>
/// <param name="Words">The label.</param>
public sealed record PlaceViews(ItemList<ViewingPosition> Views, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <inheritdoc/>
    public override Town Apply(Town town) => town with { Show = town.Show with { ViewingPositions = Views } };
}
