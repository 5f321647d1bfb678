using System.CommandLine;
using Duskwright.Plan.Format;

namespace Duskwright.Commands;

/// <summary>Prints the JSON Schema of towns.</summary>
internal static class SchemaCommand
{
    internal static Command Create()
    {
        var command = new Verb(
            "schema",
            "Print the JSON Schema of towns.",
            "An editor that knows JSON Schema then checks a town as it is typed; docs/file-format.md says the same in words.",
            "schema > town.schema.json");
        command.SetAction(_ =>
        {
            Console.Out.Write(TownSchema.Json);
            return ExitCode.Fine;
        });
        return command;
    }
}
