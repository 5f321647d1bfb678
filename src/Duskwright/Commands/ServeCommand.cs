using System.CommandLine;

namespace Duskwright.Commands;

/// <summary>Serves the app on this machine.</summary>
internal static class ServeCommand
{
    internal static Command Create()
    {
        var town = new Argument<string?>("TOWN") { Description = "the town to open; the demo town where none is named", Arity = ArgumentArity.ZeroOrOne };
        var port = new Option<int?>("--port") { Description = "the port on this machine; a free one where none is named" };
        var command = new Command("serve", "Open the app in a browser on this machine.") { town, port };
        command.SetAction((parsed, cancel) => ServeAsync(parsed.GetValue(town), parsed.GetValue(port), cancel));
        return command;
    }

    internal static async Task<int> ServeAsync(string? townPath, int? port, CancellationToken cancel)
    {
        if (townPath is not null && ReadTown.From(townPath) is null)
        {
            return ExitCode.BadInput;
        }

        await using var app = ServeApp.Build([], townPath, port);
        await app.StartAsync(cancel);
        Console.Out.WriteLine($"Duskwright is at {app.Urls.First()} (end it with Ctrl+C)");
        await app.WaitForShutdownAsync(cancel);
        return ExitCode.Fine;
    }
}
