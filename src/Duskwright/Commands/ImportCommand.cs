using System.CommandLine;
using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Plan.Lists;
using Duskwright.Proposals;
using Duskwright.Store;
using Duskwright.Store.Exchange;

namespace Duskwright.Commands;

/// <summary>Turns a list of houses into a town with packs.</summary>
internal static class ImportCommand
{
    internal static Command Create()
    {
        var list = new Argument<string>("LIST") { Description = "lines of house, number of LEDs, distance to the bank; with or without headings, mm, cm, m or inches" };
        var town = Shared.Out("the town to write: a working file where its name ends in .town, JSON otherwise");
        var json = Shared.Json();
        var command = new Verb(
            "import",
            "Make a town from a list of houses, saying what was assumed.",
            "One house a line is enough: name, LEDs, distance to the bank, as in \"Chandlery, 4, 47 cm\" or \"Lookout, 1, don't know\". "
            + "With headings on top the columns may be any of house, LEDs, distance, storeys, width, depth, windows, colour, resistor, group, state and note, in any order.",
            "import examples/ten-lines.csv --out street.json",
            "study street.json")
        {
            list, town, json,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(list), parsed.GetRequiredValue(town), parsed.GetValue(json)));
        return command;
    }

    private static int Run(string list, string path, bool json)
    {
        if (Fault(list, path) is { } fault)
        {
            Console.Error.WriteLine(fault);
            return ExitCode.BadInput;
        }

        byte[] bytes;
        try
        {
            bytes = File.ReadAllBytes(list);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"{list} cannot be read: {refused.Message}");
            return ExitCode.BadInput;
        }

        if (TownFile.IsOne(bytes))
        {
            return Copy(list, path);
        }

        var read = BuildingList.Read(bytes);
        if (read.Town is not { } town)
        {
            ReadTown.Complain(list, read.Problems);
            return ExitCode.BadInput;
        }

        var named = town with { Name = Path.GetFileNameWithoutExtension(path) };
        ItemList<Problem> refusals = [];
        LongWork.Run(("Sharing the houses over packs", () => named = StartingPlan.Of(named)), ("Writing the town", () => refusals = Written(path, named)));
        if (refusals.Count > 0)
        {
            ReadTown.Complain(path, refusals);
            return ExitCode.BadInput;
        }

        if (json)
        {
            ResultJson.Print(new { Town = path, Buildings = named.Buildings.Count, Lamps = named.Buildings.Sum(b => b.Leds ?? b.DescribedLamps().Count()), Packs = named.Supplies.Count, read.Assumptions });
            return ExitCode.Fine;
        }

        Console.Out.WriteLine($"{path}: {Counted(town.Buildings.Count, "building")}, {Counted(named.Supplies.Count, "pack")}.");
        foreach (var assumption in read.Assumptions)
        {
            Console.Out.WriteLine($"Assumed: {assumption}");
        }

        return ExitCode.Fine;
    }

    private static string Counted(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";

    // From one form to the other.
    private static int Copy(string from, string path)
    {
        if (ReadTown.From(from) is not { } town)
        {
            return ExitCode.BadInput;
        }

        var refusals = Written(path, town);
        if (refusals.Count > 0)
        {
            ReadTown.Complain(path, refusals);
            return ExitCode.BadInput;
        }

        Console.Out.WriteLine($"{path}: {Counted(town.Buildings.Count, "building")}, {Counted(town.Supplies.Count, "pack")}.");
        if (town.Board?.Photograph is not null || town.Log.Any(e => e.Photograph is not null))
        {
            Console.Out.WriteLine($"{path} names the photographs of this town and does not hold them: they stay in {from}.");
        }

        return ExitCode.Fine;
    }

    private static ItemList<Problem> Written(string path, Town town)
    {
        if (!path.EndsWith(WorkingFile.Ending, StringComparison.OrdinalIgnoreCase))
        {
            return ExchangeFile.Create(path, town).Problems;
        }

        var made = WorkingFile.Create(path, town, "Import", TimeProvider.System);
        made.File?.Dispose();
        return made.Problems;
    }

    // What the system says of these is hard to read, or wrong about what is amiss.
    private static string? Fault(string list, string path) =>
        Directory.Exists(list) ? $"{list} is a folder; name the list in it."
        : !File.Exists(list) ? $"There is no list {list}. Look at the spelling and the folder."
        : new FileInfo(list).Length > TownJson.MostBytes ? $"{list} is larger than {TownJson.MostBytes / 1048576} MB. Check that this is a list of houses and not a picture."
        : Directory.Exists(path) ? $"{path} is a folder; name the town to write, such as {Path.Combine(path, "town.json")}."
        : Path.GetDirectoryName(Path.GetFullPath(path)) is { } folder && !Directory.Exists(folder) ? $"There is no folder {folder}. Make it, or write the town elsewhere."
        : null;
}
