using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Store;
using Duskwright.Towns;

namespace Duskwright.Tests.Towns;

/// <summary>The open town as the tabs see it, with a folder of its own for its files.</summary>
public sealed class OpenTownTests : IDisposable
{
    private readonly DirectoryInfo _home = Directory.CreateTempSubdirectory("duskwright-");

    public void Dispose() => _home.Delete(recursive: true);

    [Fact]
    public void The_first_change_of_the_demo_begins_a_file_and_a_restart_goes_on_with_it()
    {
        string path;
        using (var open = Opened(null))
        {
            Assert.Null(open.FilePath);
            Assert.Empty(open.Apply(Noted(open, "mine")));
            path = open.FilePath!;
            Assert.Equal(Path.Combine(_home.FullName, "saltmarrow.town"), path);
        }

        using var again = Opened(path);
        Assert.Equal(("mine", "Note mine"), (again.Town.Buildings[0].Note, again.UndoLabel));
        again.Undo();
        Assert.NotEqual("mine", again.Town.Buildings[0].Note);
        again.Redo();
        Assert.Equal("mine", again.Town.Buildings[0].Note);
    }

    [Fact]
    public void Every_tab_is_told_of_every_change()
    {
        using var open = Opened(null);
        var (first, second) = (0, 0);
        open.Changed += () => first++;
        open.Changed += () => second++;
        open.Apply(Noted(open, "mine"));
        open.Undo();
        open.Redo();
        Assert.Equal((3, 3), (first, second));
    }

    [Fact]
    public void What_two_tabs_say_of_one_house_in_the_same_moment_is_both_kept()
    {
        using var open = Opened(null);
        var key = open.Town.Buildings[0].Key;
        Parallel.Invoke(() => open.Change(key, b => b with { Note = "mine" }, "Note it"), () => open.Change(key, b => b with { Name = "Ship chandler", Id = key }, "Call it otherwise"));
        Assert.Equal(("mine", "Ship chandler"), (open.Town.Buildings[0].Note, open.Town.Buildings[0].Name));
        Assert.Equal("gone", Assert.Single(open.Change("nothing", b => b, "Nothing")).Rule);
    }

    [Fact]
    public void What_was_refused_at_the_desk_still_stands_there_when_the_bench_sends_something()
    {
        using var open = Opened(null);
        var refused = open.Apply(new ChangeBuildings([open.Town.Buildings[0] with { SwitchGroup = "nowhere" }], "Hang it elsewhere"));
        Assert.NotEmpty(refused);
        Assert.Empty(open.Enter("1", _ => (new LogEntry { Date = new DateOnly(2026, 3, 7), Kind = LogKind.Note, Note = "dry" }, null)));
        Assert.Equal(refused, open.Trouble);
    }

    [Fact]
    public void What_stands_against_a_change_is_not_told_over_the_page_where_its_field_tells_it()
    {
        using var open = Opened(null);
        var wrong = new ChangeBuildings([open.Town.Buildings[0] with { SwitchGroup = "nowhere" }], "Hang it elsewhere");
        Assert.NotEmpty(open.Apply(wrong, told: true));
        Assert.Empty(open.Trouble);
        Assert.Equal(open.Apply(wrong), open.Trouble);
    }

    [Fact]
    public void A_town_is_worked_on_also_where_the_list_of_towns_cannot_be_kept()
    {
        var path = Path.Combine(_home.FullName, "elsewhere.town");
        using (var made = WorkingFile.Create(path, new Town { Name = "Umber", Buildings = [new Building { Name = "Mill", Leds = 2 }] }, "Begin", TimeProvider.System).File!)
        {
            Assert.NotNull(made.Path);
        }

        // A folder below a file can be made by nobody.
        var (town, problems) = OpenTown.FromFile(path, Path.Combine(path, "towns"));
        using var open = town!;
        Assert.Empty(problems);
        Assert.Equal("not-remembered", Assert.Single(open.Trouble).Rule);
        Assert.Empty(open.Apply(Noted(open, "mine")));
        Assert.Empty(open.Trouble);
    }

    [Fact]
    public void Another_town_begins_in_a_file_of_its_own_and_the_old_one_is_turned_back_to()
    {
        using var open = Opened(null);
        open.Apply(Noted(open, "mine"));
        var old = open.FilePath!;
        Assert.Empty(open.Begin(new Town { Name = "Saltmarrow", Buildings = [new Building { Name = "Mill", Leds = 2 }] }));
        Assert.Equal(("saltmarrow-2", 1), (open.FileName, open.Town.Buildings.Count));
        Assert.Null(open.UndoLabel);
        Assert.Equal(["Saltmarrow, file saltmarrow", "Saltmarrow, file saltmarrow-2"], open.Kept.Select(k => k.Called).Order(StringComparer.Ordinal));
        Assert.Empty(open.TurnTo(old));
        Assert.Equal("mine", open.Town.Buildings[0].Note);
    }

    [Fact]
    public void The_makers_towns_are_listed_by_the_names_they_have_now_with_their_houses_and_one_that_cannot_be_read_says_why()
    {
        using var open = Opened(null);
        open.Begin(new Town { Name = "Umber", Buildings = [new Building { Name = "Mill", Leds = 2 }, new Building { Name = "Lock" }] });
        Assert.Equal(("Umber", 2), Assert.Single(open.Kept) is var begun ? (begun.Name, begun.Houses) : default);
        open.Apply(new DescribeTown("Umber by night", null, open.Town.Show, "Call it otherwise"));
        open.Apply(new RemoveBuildings([open.Town.Buildings[1]]));
        File.WriteAllText(Path.Combine(_home.FullName, "old.town"), "no town at all");
        Assert.Equal(["Umber by night", "old"], open.Kept.Select(k => k.Called).OrderByDescending(n => n.Length));
        Assert.Equal(1, open.Kept.Single(k => k.Unreadable is null).Houses);
        Assert.Equal("old.town is not a town.", open.Kept.Single(k => k.Name == "old").Unreadable);
    }

    [Fact]
    public void A_named_point_is_compared_with_and_gone_back_to()
    {
        using var open = Opened(null);
        open.Apply(Noted(open, "before"));
        open.NamePoint("before the flood");
        open.Apply(Noted(open, "after"));
        var point = Assert.Single(open.Points);
        var difference = Assert.Single(open.Since(point).Differences);
        Assert.Equal(("note", "before", "after"), (difference.Field, difference.Was, difference.Is));
        Assert.Empty(open.GoBackTo(point));
        Assert.Equal(("before", "Go back to before the flood"), (open.Town.Buildings[0].Note, open.UndoLabel));
    }

    // A town that comes from somebody else may be called anything, and so may its houses and pictures.
    [Theory]
    [InlineData("../../escaped")]
    [InlineData("..\\..\\escaped")]
    [InlineData("/etc/cron.d/escaped")]
    [InlineData("C:\\Windows\\escaped")]
    [InlineData("~/.ssh/escaped")]
    [InlineData("escaped\u0000.json")]
    [InlineData("CON")]
    public void A_town_whose_name_is_a_path_is_kept_in_the_makers_folder_all_the_same(string name)
    {
        using var open = Opened(null);
        var hostile = new Town { Name = name, Buildings = [new Building { Name = "../../mill", Leds = 2 }], Board = new Board { Width = Plan.Quantities.Length.FromMillimetres(600), Depth = Plan.Quantities.Length.FromMillimetres(400) } };
        var read = Plan.Format.TownJson.Read(System.Text.Encoding.UTF8.GetBytes(Plan.Format.TownJson.Write(hostile)));
        if (read.Town is { } town)
        {
            Assert.Empty(open.Begin(town));
            Assert.Equal(_home.FullName, Path.GetDirectoryName(open.FilePath));
        }

        Assert.All(Directory.GetFiles(_home.FullName, "*", SearchOption.AllDirectories), f => Assert.Matches("^[a-z0-9.-]+$", Path.GetFileName(f)));
        Assert.Equal(Path.GetFileName(open.FileStem), open.FileStem);
        Assert.False(open.HasPicture("../../escaped"));
        Assert.Null(open.Picture("../../escaped"));
    }

    [Fact]
    public void What_was_refused_is_told_until_it_has_been_read()
    {
        using var open = Opened(null);
        var looked = open.ToLookAt();
        open.TurnTo(Path.Combine(_home.FullName, "nothing.town"));
        looked.Undo();
        looked.Heard();
        Assert.Empty(looked.Trouble);
        Assert.Equal("no-file", Assert.Single(open.Trouble).Rule);
        open.Heard();
        Assert.Empty(open.Trouble);
    }

    [Fact]
    public void A_file_that_cannot_be_opened_leaves_the_town_open_and_is_told()
    {
        using var open = Opened(null);
        var nothing = Path.Combine(_home.FullName, "nothing.town");
        Assert.Equal(Assert.Single(open.TurnTo(nothing)), Assert.Single(open.Trouble));
        Assert.Equal("Saltmarrow", open.Town.Name);
        open.Apply(Noted(open, "mine"));
        Assert.Empty(open.Trouble);
    }

    [Fact]
    public void Where_no_file_can_be_made_the_town_is_worked_on_in_memory_and_the_maker_told()
    {
        var taken = Path.Combine(_home.FullName, "a file");
        File.WriteAllText(taken, "");
        using var open = OpenTown.FromFile(null, taken).Town!;
        Assert.Empty(open.Apply(Noted(open, "mine")));
        Assert.Equal("mine", open.Town.Buildings[0].Note);
        Assert.Equal("not-writable", Assert.Single(open.Trouble).Rule);
    }

    private static ChangeBuildings Noted(OpenTown open, string note) => new([open.Town.Buildings[0] with { Note = note }], $"Note {note}");

    private OpenTown Opened(string? path)
    {
        var (town, problems) = OpenTown.FromFile(path, _home.FullName);
        Assert.Empty(problems);
        return town!;
    }
}
