using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
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

    private static readonly string[] Engines = ["Circuits", "Light", "Harness", "Calendar", "Faults"];

    // Book may read any room's result records.
    private static readonly string[] Readers = ["Book"];

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

    [Fact]
    public void No_rooms_code_uses_a_type_of_a_room_it_may_not()
    {
        // A project sees what its references see; only its compiled code tells what it uses.
        Assert.All(Allowed.Keys.Where(IsBuilt), room => Assert.Empty(RoomsUsed(room).Except(Readers.Contains(room) ? [.. Allowed[room], .. Engines] : Allowed[room])));
    }

    [Theory]
    [InlineData("Book")]
    [InlineData("Store")]
    [InlineData("")]
    public void Only_the_study_and_the_proposals_call_engines(string room) =>
        Assert.DoesNotContain(MembersUsed(room), m => Engines.Contains(m.Room) && !IsRead(m.Member));

    [Fact]
    public void The_study_is_seen_to_call_engines() =>
        Assert.Contains(MembersUsed("Study"), m => m.Room == "Circuits" && !IsRead(m.Member));

    // Reading a property of a result record is no call of an engine.
    private static bool IsRead(string member) => member.StartsWith("get_", StringComparison.Ordinal);

    private static bool IsBuilt(string room) => File.Exists(Assembly(room));

    private static string Assembly(string room) => Path.Combine(AppContext.BaseDirectory, room.Length == 0 ? "Duskwright.dll" : $"Duskwright.{room}.dll");

    private static List<string> RoomsUsed(string room)
    {
        using var file = new PEReader(File.OpenRead(Assembly(room)));
        var metadata = file.GetMetadataReader();
        return
        [
            .. metadata.AssemblyReferences.Select(a => metadata.GetString(metadata.GetAssemblyReference(a).Name))
                .Where(name => name.StartsWith("Duskwright.", StringComparison.Ordinal)).Select(name => name["Duskwright.".Length..]),
        ];
    }

    private static List<(string Room, string Member)> MembersUsed(string room)
    {
        using var file = new PEReader(File.OpenRead(Assembly(room)));
        var metadata = file.GetMetadataReader();
        return
        [
            .. from handle in metadata.MemberReferences
               let member = metadata.GetMemberReference(handle)
               where member.Parent.Kind == HandleKind.TypeReference
               let type = metadata.GetTypeReference((TypeReferenceHandle)member.Parent)
               where type.ResolutionScope.Kind == HandleKind.AssemblyReference
               let used = metadata.GetString(metadata.GetAssemblyReference((AssemblyReferenceHandle)type.ResolutionScope).Name)
               where used.StartsWith("Duskwright.", StringComparison.Ordinal)
               select (used["Duskwright.".Length..], metadata.GetString(member.Name)),
        ];
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
