using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Store;

namespace Duskwright.Towns;

/// <summary>The folder in which towns are kept unless the maker names another place.</summary>
public static class TownFolder
{
    private const int MostLetters = 60;

    /// <summary>The user's own: under the system's folder for a program's local data.</summary>
    public static string OfUser => Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "Duskwright");

    /// <summary>A path that no town has yet.</summary>
    /// <param name="home">The folder.</param>
    /// <param name="town">The town's name; only its letters and digits are used.</param>
    /// <returns>The path of the file to be.</returns>
    public static string FreePath(string home, string town)
    {
        var stem = Slug.Of(town) is { Length: > 0 } slug ? slug[..Math.Min(slug.Length, MostLetters)] : "town";
        var path = Path.Combine(home, stem + WorkingFile.Ending);
        for (var number = 2; File.Exists(path); number++)
        {
            path = Path.Combine(home, string.Create(CultureInfo.InvariantCulture, $"{stem}-{number}{WorkingFile.Ending}"));
        }

        return path;
    }

    /// <summary>The towns in a folder, and those elsewhere that were opened lately.</summary>
    /// <param name="home">The folder.</param>
    /// <returns>The towns, last changed first; none where there is no such folder.</returns>
    public static ItemList<KeptTown> In(string home) =>
        !Directory.Exists(home) ? [] : new DirectoryInfo(home).GetFiles($"*{WorkingFile.Ending}").Concat(RememberedTowns.In(home).Select(p => new FileInfo(p)))
            .OrderByDescending(Changed)
            .Select(f => new KeptTown(Path.GetFileNameWithoutExtension(f.Name), f.FullName, Changed(f)))
            .ToItemList();

    // While a town is open its newest edits are in the log beside it.
    private static DateTime Changed(FileInfo file) =>
        new FileInfo($"{file.FullName}-wal") is { Exists: true } log && log.LastWriteTimeUtc > file.LastWriteTimeUtc ? log.LastWriteTimeUtc : file.LastWriteTimeUtc;
}
