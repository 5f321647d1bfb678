using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>A building and its route taken out of the town. What the log says of it stays, with its name in the note.</summary>
/// <param name="Removed">The building.</param>
public sealed record RemoveBuilding(Building Removed) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => $"Remove {Removed.Name}";

    /// <inheritdoc/>
    public override Town Apply(Town town) => SharedRuns.Kept(town with
    {
        Buildings = town.Buildings.Where(b => b.Key != Removed.Key).ToItemList(),
        Routes = town.Routes.Where(r => r.Building != Removed.Key).ToItemList(),
        Calendar = town.Calendar is { } calendar ? calendar with { Steps = calendar.Steps.Where(s => s.Building != Removed.Key).ToItemList() } : null,
        Log = town.Log.Select(l => l.Building == Removed.Key ? l with { Building = null, Note = $"{Removed.Name}: {l.Note}".TrimEnd(' ', ':') } : l).ToItemList(),
    });
}
