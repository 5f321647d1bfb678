using System.CommandLine;
using Duskwright.Serve;

namespace Duskwright.Commands;

/// <summary>Serves the app on this machine.</summary>
internal static class ServeCommand
{
    internal static Command Create()
    {
        var town = new Argument<string?>("TOWN") { Description = "the town to open; the demo town where none is named", Arity = ArgumentArity.ZeroOrOne };
        var port = Typed.Whole("--port", "the port on this machine; a free one is taken where this one is busy", ServeApp.UsualPort, 1, 65_535);
        var command = new Verb(
            "serve",
            "Open the app in a browser on this machine.",
            "The app answers to this machine alone. A town is kept in a working file, NAME.town, beside a JSON file or in your own data folder; JSON is read and never written to. Without a town it opens the demo town Saltmarrow.",
            "serve",
            "serve examples/tavern.json --port 6001")
        {
            town, port,
        };
        command.SetAction((parsed, cancel) => ServeAsync(parsed.GetValue(town), parsed.GetValue(port), cancel));
        return command;
    }

    internal static Task<int> ServeAsync(string? townPath, int port, CancellationToken cancel) =>
        ServeApp.RunAsync(townPath, port, cancel);
}
