using System.CommandLine;

namespace Duskwright.Commands;

/// <summary>Arguments and options that several verbs take.</summary>
internal static class Shared
{
    internal static Argument<string> TownPath() => new("TOWN") { Description = "the town: a working file or JSON" };

    internal static Option<bool> Json() => new("--json") { Description = "print the result as JSON" };

    internal static Option<string> Out(string what) => new("--out") { Description = what, Required = true };
}
