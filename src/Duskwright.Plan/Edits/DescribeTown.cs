using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>The town's name, its scale and its show, said anew.</summary>
/// <param name="Name">What the town is called.</param>
/// <param name="ScaleRatio">The scale as the second number of its ratio; none where nobody has said it.</param>
/// <param name="Show">When, how long and in what light it is shown, and what counts as dim.</param>
/// <param name="Words">The label.</param>
public sealed record DescribeTown(string Name, double? ScaleRatio, Show Show, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <inheritdoc/>
    public override Town Apply(Town town) => town with { Name = Name, ScaleRatio = ScaleRatio, Show = Show };
}
