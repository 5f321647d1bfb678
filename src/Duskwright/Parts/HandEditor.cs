using Duskwright.Plan.Edits;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>What every editor in the margin does: a change is an edit of its own, and what stands against it is said beneath.</summary>
public abstract class HandEditor : ComponentBase, IDisposable
{
    [Inject]
    protected OpenTown Open { get; set; } = default!;

    /// <summary>What kept the last change from being made; none once one has been.</summary>
    protected string? Wrong { get; set; }

    /// <inheritdoc/>
    public void Dispose()
    {
        Open.Changed -= Redraw;
        GC.SuppressFinalize(this);
    }

    // What is undone, or changed in another tab, changes what the fields show.
    /// <inheritdoc/>
    protected override void OnInitialized() => Open.Changed += Redraw;

    /// <summary>Makes an edit.</summary>
    /// <param name="edit">The edit; none where there is nothing to do.</param>
    /// <returns>Whether it was made.</returns>
    protected bool Do(TownEdit? edit)
    {
        if (edit is null)
        {
            return false;
        }

        var problems = Open.Apply(edit, told: true);
        Wrong = problems.Count == 0 ? null : $"{problems[0].Message} {problems[0].Remedy}".Trim();
        return problems.Count == 0;
    }

    private void Redraw() => _ = InvokeAsync(StateHasChanged);
}
