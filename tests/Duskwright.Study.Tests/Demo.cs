using Duskwright.Plan.Document;
using Duskwright.Plan.Format;

namespace Duskwright.Study.Tests;

/// <summary>The demo towns.</summary>
internal static class Demo
{
    internal static Town Saltmarrow { get; } = Read("saltmarrow.json");

    internal static Town Tavern { get; } = Read("tavern.json");

    private static Town Read(string name) => TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", name))).Town!;
}
