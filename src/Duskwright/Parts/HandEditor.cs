using Duskwright.Plan.Edits;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>What every editor in the margin does: a change is an edit of its own, and what stands against it is said beneath.</summary>
public abstract class HandEditor : ComponentBase
{
    [Inject]
    protected OpenTown Open { get; set; } = default!;

    /// <summary>What kept the last change from being made; none once one has been.</summary>
    protected string? Wrong { get; set; }

    /// <summary>Makes an edit.</summary>
    /// <param name="edit">The edit; none where there is nothing to do.</param>
    /// <returns>Whether it was made.</returns>
    protected bool Do(TownEdit? edit)
    {
        if (edit is null)
        {
            return false;
        }

        var problems = Open.Apply(edit);
        Wrong = problems.Count == 0 ? null : $"{problems[0].Message} {problems[0].Remedy}".Trim();
        return problems.Count == 0;
    }
}
