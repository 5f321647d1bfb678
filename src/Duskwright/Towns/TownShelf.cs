using System.Collections.Concurrent;
using Duskwright.Plan;
using Duskwright.Store;

namespace Duskwright.Towns;

/// <summary>The maker's towns as a list tells of them; a file is looked into again only once it has changed.</summary>
/// <param name="home">The folder of the maker's towns.</param>
internal sealed class TownShelf(string home)
{
    private readonly ConcurrentDictionary<string, (DateTime Changed, TownGlance Glance)> _seen = new(StringComparer.Ordinal);

    /// <summary>The towns in the folder, and those elsewhere that were opened lately.</summary>
    /// <returns>The towns, last changed first; none where there is no such folder.</returns>
    internal ItemList<KeptTown> Towns()
    {
        if (!Directory.Exists(home))
        {
            return [];
        }

        var seen = new DirectoryInfo(home).GetFiles($"*{WorkingFile.Ending}").Concat(RememberedTowns.In(home).Select(p => new FileInfo(p)))
            .Select(f => (File: f, Changed: Changed(f), Glance: Glance(f)))
            .OrderByDescending(f => f.Changed)
            .ToList();
        var shared = seen.GroupBy(t => t.Glance.Name, StringComparer.CurrentCultureIgnoreCase).Where(g => g.Key is not null && g.Count() > 1).Select(g => g.Key).ToHashSet(StringComparer.CurrentCultureIgnoreCase);
        return seen.Select(t => new KeptTown(
            t.Glance.Name ?? Path.GetFileNameWithoutExtension(t.File.Name),
            t.File.FullName,
            t.Changed,
            t.Glance.Houses,
            t.Glance.Problem?.Message,
            shared.Contains(t.Glance.Name))).ToItemList();
    }

    private TownGlance Glance(FileInfo file)
    {
        var changed = Changed(file);
        if (_seen.TryGetValue(file.FullName, out var before) && before.Changed == changed)
        {
            return before.Glance;
        }

        // What could not be read may be readable the next time, unchanged as it is.
        var glance = WorkingFile.Glance(file.FullName);
        if (glance.Problem is null)
        {
            _seen[file.FullName] = (changed, glance);
        }

        return glance;
    }

    // While a town is open its newest edits are in the log beside it.
    private static DateTime Changed(FileInfo file) =>
        new FileInfo($"{file.FullName}-wal") is { Exists: true } log && log.LastWriteTimeUtc > file.LastWriteTimeUtc ? log.LastWriteTimeUtc : file.LastWriteTimeUtc;
}
