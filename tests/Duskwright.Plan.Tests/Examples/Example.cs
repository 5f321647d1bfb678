using Duskwright.Plan.Document;
using Duskwright.Plan.Format;

namespace Duskwright.Plan.Tests.Examples;

internal static class Example
{
    internal static string Text(string file) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", file));

    internal static Town Town(string file)
    {
        var read = TownJson.Read(Text(file));
        return read.Town ?? throw new InvalidDataException(string.Join('\n', read.Problems));
    }
}
