using Duskwright.Plan;

namespace Duskwright.Towns;

/// <summary>The towns that the maker keeps outside their own folder, so that they are offered again.</summary>
internal static class RememberedTowns
{
    private const string FileName = "elsewhere.txt";
    private const int Most = 20;

    /// <summary>Where they lie.</summary>
    /// <param name="home">The folder of the maker's towns.</param>
    /// <returns>The paths that are still there, last opened first.</returns>
    internal static ItemList<string> In(string home) => Lines(home).Where(File.Exists).ToItemList();

    /// <summary>Remembers one, where it lies elsewhere.</summary>
    /// <param name="home">The folder of the maker's towns.</param>
    /// <param name="path">The full path of the town's file.</param>
    internal static void Remember(string home, string path)
    {
        if (Path.GetDirectoryName(path) == Path.GetFullPath(home) || Lines(home).FirstOrDefault() == path)
        {
            return;
        }

        Directory.CreateDirectory(home);
        File.WriteAllLines(Path.Combine(home, FileName), Lines(home).Where(l => l != path).Prepend(path).Take(Most));
    }

    private static string[] Lines(string home) => File.Exists(Path.Combine(home, FileName)) ? File.ReadAllLines(Path.Combine(home, FileName)) : [];
}
