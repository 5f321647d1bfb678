using System.CommandLine;
using Duskwright.Plan.Lists;
using Duskwright.Proposals;
using Duskwright.Store.Exchange;

namespace Duskwright.Commands;

/// <summary>Turns a list of houses into a town with packs.</summary>
internal static class ImportCommand
{
    internal static Command Create()
    {
        var list = new Argument<string>("LIST") { Description = "lines of house, number of LEDs, distance to the bank; with or without headings, mm, cm, m or inches" };
        var town = Shared.Out("the town to write");
        var command = new Command("import", "Make a town from a list of houses, saying what was assumed.") { list, town };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(list), parsed.GetRequiredValue(town)));
        return command;
    }

    private static int Run(string list, string path)
    {
        string text;
        try
        {
            text = File.ReadAllText(list);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"{list} cannot be read: {refused.Message}");
            return ExitCode.BadInput;
        }

        var read = BuildingList.Read(text);
        if (read.Town is not { } town)
        {
            ReadTown.Complain(list, read.Problems);
            return ExitCode.BadInput;
        }

        var named = town with { Name = Path.GetFileNameWithoutExtension(path) };
        var written = ExchangeFile.Create(path, StartingPlan.Of(named));
        if (written.File is null)
        {
            ReadTown.Complain(path, written.Problems);
            return ExitCode.BadInput;
        }

        Console.Out.WriteLine($"{path}: {town.Buildings.Count} buildings, {written.File.Town.Supplies.Count} packs.");
        foreach (var assumption in read.Assumptions)
        {
            Console.Out.WriteLine($"Assumed: {assumption}");
        }

        return ExitCode.Fine;
    }
}
