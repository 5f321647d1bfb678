using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>One change to a town that can be shown, made and undone as a whole.</summary>
public abstract record TownEdit
{
    /// <summary>What the edit does, as the label of a button: "Fit three LR6 in its place".</summary>
    public abstract string Label { get; }

    /// <summary>Makes the change.</summary>
    /// <param name="town">The town as it stands; it is not changed.</param>
    /// <returns>The town after the change; the same town where there is nothing to change.</returns>
    public abstract Town Apply(Town town);

    /// <summary>What this edit must not do although a town may say it: a window drawn over another.</summary>
    /// <param name="town">The town as it stands.</param>
    /// <returns>The problems; none where nothing stands against the edit.</returns>
    public virtual ItemList<Problem> Problems(Town town) => [];
}
