using System.Globalization;
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
}
