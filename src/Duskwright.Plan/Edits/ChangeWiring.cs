using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>Another usual lamp, current, resistor or wire: what holds for every building that says nothing itself.</summary>
/// <param name="Wiring">What is usual from now on.</param>
/// <param name="Words">The label.</param>
public sealed record ChangeWiring(WiringChoices Wiring, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <inheritdoc/>
    public override Town Apply(Town town) => town with { Wiring = Wiring };
}
