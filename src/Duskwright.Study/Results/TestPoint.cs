using Duskwright.Plan.Document;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>One test of a building: what to do, what should light, and what a meter should read.</summary>
/// <param name="When">The stage: "lamps on the bench".</param>
/// <param name="Do">What to touch to what.</param>
/// <param name="ShouldLight">How many lamps should light.</param>
/// <param name="Reading">What a meter should read, with its band, A; none where it tells nothing.</param>
public sealed record TestPoint(string When, string Do, int ShouldLight, Figure? Reading)
{
    /// <summary>The name by which the log refers to it.</summary>
    public string Key => Slug.Of(When);
}
