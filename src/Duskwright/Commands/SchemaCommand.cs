using System.CommandLine;
using Duskwright.Plan.Format;

namespace Duskwright.Commands;

/// <summary>Prints the JSON Schema of towns.</summary>
internal static class SchemaCommand
{
    internal static Command Create()
    {
        var command = new Command("schema", "Print the JSON Schema of towns.");
        command.SetAction(_ =>
        {
            Console.Out.Write(TownSchema.Json);
            return ExitCode.Fine;
        });
        return command;
    }
}
