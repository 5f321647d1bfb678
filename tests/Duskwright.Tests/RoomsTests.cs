using System.Xml.Linq;

namespace Duskwright.Tests;

/// <summary>The arrows between rooms, as docs/architecture.md draws them.</summary>
public class RoomsTests
{
    private static readonly Dictionary<string, string[]> Allowed = new(StringComparer.Ordinal)
    {
        ["Plan"] = [],
        ["Circuits"] = [],
        ["Light"] = [],
        ["Harness"] = [],
        ["Calendar"] = [],
        ["Faults"] = ["Circuits"],
        ["Study"] = ["Plan", "Circuits", "Light", "Harness", "Calendar", "Faults"],
        ["Proposals"] = ["Plan", "Study", "Harness", "Calendar"],
        ["Book"] = ["Plan", "Study"],
        ["Store"] = ["Plan"],
    };

    [Fact]
    public void No_room_imports_one_it_may_not()
    {
        var rooms = Directory.GetDirectories(Path.Combine(Root(), "src")).Where(d => Path.GetFileName(d).StartsWith("Duskwright.", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(rooms);
        foreach (var folder in rooms)
        {
            var room = Path.GetFileName(folder)["Duskwright.".Length..];
            var imports = XDocument.Load(Directory.GetFiles(folder, "*.csproj").Single())
                .Descendants("ProjectReference")
                .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/'))["Duskwright.".Length..]);
            Assert.All(imports, import => Assert.Contains(import, Allowed[room]));
        }
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "Duskwright.slnx")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }
}
