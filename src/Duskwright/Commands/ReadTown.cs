using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Plan.Lists;
using Duskwright.Proposals;
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

    /// <summary>Reads a town, or makes one of a list of houses and says what was assumed.</summary>
    internal static Town? OrList(string path)
    {
        if (!File.Exists(path) || new FileInfo(path).Length > TownJson.MostBytes)
        {
            return From(path);
        }

        byte[] bytes;
        try
        {
            bytes = File.ReadAllBytes(path);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"{path} cannot be read: {refused.Message}");
            return null;
        }

        if (TownFile.IsOne(bytes))
        {
            return From(path);
        }

        var typed = BuildingList.Read(bytes);
        if (typed.Town is not { } listed)
        {
            Complain(path, typed.Problems);
            return null;
        }

        foreach (var assumption in typed.Assumptions)
        {
            Console.Error.WriteLine($"Assumed: {assumption}");
        }

        return StartingPlan.Of(listed with { Name = Path.GetFileNameWithoutExtension(path) });
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
