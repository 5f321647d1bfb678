using Duskwright.Plan;

namespace Duskwright.Towns;

/// <summary>At which addresses the house has found a town: printed labels name them, so they are asked for again.</summary>
internal static class RememberedDoors
{
    private const string FileName = "doors.txt";
    private const int Most = 200;

    /// <summary>The addresses at which a town was found.</summary>
    /// <param name="home">The folder of the maker's towns; none where nothing is kept.</param>
    /// <param name="path">The town's file; none where it has none, and nothing to be found by.</param>
    /// <returns>The addresses, the first it had first.</returns>
    internal static ItemList<Uri> Of(string? home, string? path) => All(home).Where(d => d.Path == path).Select(d => d.Address).ToItemList();

    /// <summary>Whether another town is asked for at a port.</summary>
    /// <param name="home">The folder of the maker's towns; none where nothing is kept.</param>
    /// <param name="path">The town's file.</param>
    /// <param name="port">The port.</param>
    /// <returns>Whether a label of another may name it.</returns>
    internal static bool IsOfAnother(string? home, string? path, int port) => All(home).Any(d => d.Path != path && d.Address.Port == port);

    /// <summary>Remembers where a town is found from now on.</summary>
    /// <param name="home">The folder of the maker's towns; none where nothing is kept.</param>
    /// <param name="path">The town's file; none where it has none.</param>
    /// <param name="address">The address.</param>
    internal static void Remember(string? home, string? path, Uri address)
    {
        if (home is null || path is null || Of(home, path).Contains(address))
        {
            return;
        }

        Directory.CreateDirectory(home);
        File.WriteAllLines(Path.Combine(home, FileName), All(home).Append((Address: address, Path: path)).TakeLast(Most).Select(d => $"{d.Address.GetLeftPart(UriPartial.Authority)}\t{d.Path}"));
    }

    private static IEnumerable<(Uri Address, string Path)> All(string? home) =>
        home is null || !File.Exists(Path.Combine(home, FileName))
            ? []
            : from line in File.ReadAllLines(Path.Combine(home, FileName))
              let said = line.Split('\t', 2)
              where said.Length == 2 && Uri.IsWellFormedUriString(said[0], UriKind.Absolute)
              select (new Uri(said[0]), said[1]);
}
