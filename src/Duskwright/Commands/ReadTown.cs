using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Store;

namespace Duskwright.Commands;

/// <summary>Reads the town a verb is asked about, or says on the error stream why it cannot.</summary>
internal static class ReadTown
{
    internal static Town? From(string path)
    {
        if (Directory.Exists(path))
        {
            Console.Error.WriteLine($"{path} is a folder; name the town in it.");
            return null;
        }

        var read = TownFile.Read(path);
        if (read.Town is null)
        {
            Complain(path, read.Problems);
        }

        return read.Town;
    }

    internal static void Complain(string path, ItemList<Problem> problems)
    {
        Console.Error.WriteLine(problems.Count == 1 ? $"{path} cannot be used:" : $"{path} cannot be used, for {problems.Count} reasons:");
        foreach (var problem in problems)
        {
            Console.Error.WriteLine($"  {(problem.Place.Length > 0 ? $"{problem.Place}: " : "")}{problem.Message} {problem.Remedy}");
        }
    }
}
