using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Towns;

namespace Duskwright.Serve;

/// <summary>The town that an app is begun with.</summary>
/// <param name="Town">The town; the demo where another process has the one that was meant; none where it cannot be opened.</param>
/// <param name="Held">The town that was meant and that another has; none where none is.</param>
/// <param name="Problems">What kept the town that was meant from being opened.</param>
public sealed record FirstTown(OpenTown? Town, HeldTown? Held, ItemList<Problem> Problems)
{
    /// <summary>Opens it.</summary>
    /// <param name="path">The file; none for the demo town.</param>
    /// <param name="home">The folder of the maker's towns.</param>
    /// <returns>What became of it.</returns>
    internal static FirstTown Of(string? path, string home)
    {
        var (town, problems) = OpenTown.FromFile(path, home);
        return HeldTown.Of(path, problems) is { } held ? new(OpenTown.FromFile(null, home).Town, held, problems) : new(town, null, problems);
    }
}
