using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>How often something breaks in the maker's work.</summary>
/// <param name="What">What breaks.</param>
/// <param name="How">How often; none where it is as usual.</param>
/// <param name="Words">The label.</param>
public sealed record TellBreakage(Breaks What, HowOften? How, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <inheritdoc/>
    public override Town Apply(Town town)
    {
        var others = town.Breakages.Where(b => b.What != What);
        return town with { Breakages = (How is { } how ? others.Append(new Breakage { What = What, How = how }) : others).OrderBy(b => b.What).ToItemList() };
    }
}
