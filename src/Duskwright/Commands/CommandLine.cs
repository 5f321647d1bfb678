using System.CommandLine;
using System.CommandLine.Help;

namespace Duskwright.Commands;

/// <summary>The verbs of the program.</summary>
internal static class CommandLine
{
    internal static async Task<int> RunAsync(string[] args)
    {
        var root = new RootCommand(
            "Plans, computes, prints and mends the lighting of miniature towns.\n" +
            "Without a verb it serves the app on the demo town. A town is a JSON file; start from a list of houses with \"import\".\n" +
            "Exit codes: 0 fine, 1 something spoils the show, 2 bad input.")
        {
            StudyCommand.Create(),
            BookCommand.Create(),
            SumsCommand.Create(),
            ImportCommand.Create(),
            SchemaCommand.Create(),
            ServeCommand.Create(),
        };
        foreach (var help in root.Options.OfType<HelpOption>())
        {
            help.Action = new TeachingHelp((HelpAction)help.Action!);
        }

        root.SetAction((_, cancel) => ServeCommand.ServeAsync(null, null, cancel));

        var parsed = root.Parse(args);
        var code = await parsed.InvokeAsync();
        // Who asks for help has not said all the rest yet.
        return parsed.Errors.Count > 0 && parsed.Action is not TeachingHelp ? ExitCode.BadInput : code;
    }
}
