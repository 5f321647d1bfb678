using System.Globalization;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>Some buildings and their routes taken out of the town. What the log says of them stays, with their names in the note.</summary>
/// <param name="Removed">The buildings, one or more.</param>
public sealed record RemoveBuildings(ItemList<Building> Removed) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Removed.Count == 1 ? $"Remove {Removed[0].Name}" : string.Create(CultureInfo.InvariantCulture, $"Remove {Removed.Count} houses together");

    /// <inheritdoc/>
    public override Town Apply(Town town)
    {
        var names = Removed.ToDictionary(b => b.Key, b => b.Name, StringComparer.Ordinal);
        return SharedRuns.Kept(town with
        {
            Buildings = town.Buildings.Where(b => !names.ContainsKey(b.Key)).ToItemList(),
            Routes = town.Routes.Where(r => !names.ContainsKey(r.Building)).ToItemList(),
            Calendar = town.Calendar is { } calendar ? calendar with { Steps = calendar.Steps.Where(s => !names.ContainsKey(s.Building)).ToItemList() } : null,
            Log = town.Log.Select(l => l.Building is { } key && names.TryGetValue(key, out var name) ? l with { Building = null, Note = $"{name}: {l.Note}".TrimEnd(' ', ':') } : l).ToItemList(),
        });
    }
}
