using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Parsing;
using Duskwright.Serve;

namespace Duskwright.Commands;

/// <summary>The verbs of the program.</summary>
internal static class CommandLine
{
    internal static async Task<int> RunAsync(string[] args)
    {
        var root = new RootCommand(
            "Plans, computes, prints and mends the lighting of miniature towns.\n" +
            "Without a verb it serves the app on the demo town. A town is a working file or JSON; start from a list of houses with \"import\".\n" +
            "Exit codes: 0 fine, 1 something spoils the show, 2 bad input.")
        {
            StudyCommand.Create(),
            BookCommand.Create(),
            NightCommand.Create(),
            SumsCommand.Create(asked: args.Contains(SumsCommand.Word)),
            ImportCommand.Create(),
            SchemaCommand.Create(),
            ServeCommand.Create(),
        };
        foreach (var help in root.Options.OfType<HelpOption>())
        {
            help.Action = new TeachingHelp((HelpAction)help.Action!);
        }

        root.SetAction((_, cancel) => ServeCommand.ServeAsync(null, ServeApp.UsualPort, cancel));

        var parsed = root.Parse(args);

        // Who asks for help has not said all the rest yet.
        return parsed.Errors.Count > 0 && parsed.Action is not TeachingHelp ? Refuse(parsed) : await parsed.InvokeAsync();
    }

    private static int Refuse(ParseResult parsed)
    {
        foreach (var error in parsed.Errors)
        {
            Console.Error.WriteLine(error.Message);
        }

        var path = parsed.CommandResult.Command is RootCommand ? "" : $"{Path(parsed.CommandResult)} ";
        Console.Error.WriteLine($"{parsed.RootCommandResult.Command.Name} {path}--help tells what can be said, with lines to try.");
        return ExitCode.BadInput;
    }

    // "sums wire": the words that lead to a command, without the program's own name.
    private static string Path(CommandResult result) =>
        result.Parent is CommandResult { Command: not RootCommand } parent ? $"{Path(parent)} {result.Command.Name}" : result.Command.Name;
}
