using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Store.Exchange;

namespace Duskwright.Store.Tests.Exchange;

public sealed class ExchangeFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("duskwright").FullName;

    private static readonly Town Saltmarrow = new() { Name = "Saltmarrow", Buildings = [new Building { Name = "Chandlery", Leds = 4 }] };

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_town_saved_is_the_town_opened()
    {
        Assert.Empty(ExchangeFile.Create(At("a.json"), Saltmarrow).Problems);
        Assert.Equal(Saltmarrow, Opened("a.json").Town);
    }

    [Fact]
    public void Saving_again_keeps_the_newest_town_and_nothing_beside_it()
    {
        var file = ExchangeFile.Create(At("a.json"), Saltmarrow).File!;
        for (var leds = 5; leds < 9; leds++)
        {
            file = file.Save(Saltmarrow with { Buildings = [new Building { Name = "Chandlery", Leds = leds }] }).File!;
        }

        Assert.Equal(8, Opened("a.json").Town.Buildings[0].Leds);
        Assert.Equal([At("a.json")], Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void A_file_changed_by_somebody_else_is_not_overwritten()
    {
        var mine = ExchangeFile.Create(At("a.json"), Saltmarrow).File!;
        Opened("a.json").Save(Saltmarrow with { Note = "theirs" });

        var problem = Single(mine.Save(Saltmarrow with { Note = "mine" }));
        Assert.Equal("changed-meanwhile", problem.Rule);
        Assert.Equal("a.json was changed or removed by somebody else since it was opened, and has been left as it is.", problem.Message);
        Assert.Equal("theirs", Opened("a.json").Town.Note);
        Assert.Equal([At("a.json")], Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void A_file_removed_by_somebody_else_is_not_made_anew()
    {
        var mine = ExchangeFile.Create(At("a.json"), Saltmarrow).File!;
        File.Delete(At("a.json"));
        Assert.Equal("changed-meanwhile", Single(mine.Save(Saltmarrow)).Rule);
        Assert.Empty(Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void A_file_touched_but_not_changed_is_saved()
    {
        var mine = ExchangeFile.Create(At("a.json"), Saltmarrow).File!;
        File.SetLastWriteTimeUtc(At("a.json"), new DateTime(2020, 1, 1, 0, 0, 0, DateTimeKind.Utc));
        Assert.Empty(mine.Save(Saltmarrow with { Note = "mine" }).Problems);
    }

    [Fact]
    public void A_new_file_does_not_replace_one_that_is_there()
    {
        File.WriteAllText(At("a.json"), "precious");
        var problem = Single(ExchangeFile.Create(At("a.json"), Saltmarrow));
        Assert.Equal(("already-there", "There is a file a.json already."), (problem.Rule, problem.Message));
        Assert.Equal("precious", File.ReadAllText(At("a.json")));
    }

    [Fact]
    public void A_file_that_is_not_there_is_named_with_its_folder()
    {
        var problem = Single(ExchangeFile.Open(At("b.json")));
        Assert.Equal(("no-file", $"There is no file b.json in {_folder}."), (problem.Rule, problem.Message));
    }

    [Fact]
    public void A_folder_is_no_file() =>
        Assert.NotEmpty(ExchangeFile.Open(_folder).Problems);

    [Fact]
    public void A_folder_that_is_not_there_leaves_the_town_unsaved() =>
        Assert.Equal("not-saved", Single(ExchangeFile.Create(Path.Combine(_folder, "nowhere", "a.json"), Saltmarrow)).Rule);

    [Fact]
    public void A_file_that_is_no_town_has_the_problems_of_the_reader()
    {
        File.WriteAllText(At("a.json"), "{ \"format\": \"duskwright-town\",\n \"vers");
        Assert.Equal("cut-short", Single(ExchangeFile.Open(At("a.json"))).Rule);
    }

    private string At(string name) => Path.Combine(_folder, name);

    private ExchangeFile Opened(string name)
    {
        var result = ExchangeFile.Open(At(name));
        Assert.Empty(result.Problems);
        return result.File!;
    }

    private static Problem Single(ExchangeFileResult result)
    {
        Assert.Null(result.File);
        return Assert.Single(result.Problems);
    }
}
