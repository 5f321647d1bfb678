using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;

namespace Duskwright.Store.Tests;

/// <summary>A folder of its own for one test, and a town to keep in it.</summary>
internal sealed class Shelf : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("duskwright");

    internal static Town Saltmarrow { get; } = TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"))).Town!;

    internal string Folder => _folder.FullName;

    internal string Town => At("saltmarrow.town");

    internal string At(string name) => Path.Combine(Folder, name);

    internal WorkingFile Begun(Town town) => Sound(WorkingFile.Create(Town, town, "Begin", TimeProvider.System));

    internal WorkingFile Opened() => Sound(WorkingFile.Open(Town, TimeProvider.System));

    internal static WorkingFile Sound(WorkingFileResult result)
    {
        Assert.Empty(result.Problems);
        return result.File!;
    }

    internal static Problem Refused(WorkingFileResult result)
    {
        Assert.Null(result.File);
        return Assert.Single(result.Problems);
    }

    /// <summary>A town closed after a few edits.</summary>
    internal void Fill(int edits)
    {
        using var file = Begun(Saltmarrow);
        for (var edit = 1; edit <= edits; edit++)
        {
            Assert.Empty(file.Change(WithLeds(file.Town, edit), $"Edit {edit}"));
        }
    }

    internal static Town WithLeds(Town town, int leds) =>
        town with { Buildings = town.Buildings.Select((b, i) => i == 0 ? b with { Leds = leds, Storeys = [] } : b).ToItemList() };

    public void Dispose() => _folder.Delete(recursive: true);
}
