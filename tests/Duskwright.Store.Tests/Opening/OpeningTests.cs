using Duskwright.Plan;
using Duskwright.Store.Opening;
using Duskwright.Store.Schema;

namespace Duskwright.Store.Tests.Opening;

public sealed class OpeningTests : IDisposable
{
    private readonly Shelf _shelf = new();

    public void Dispose() => _shelf.Dispose();

    [Fact]
    public void A_second_writer_is_told_so_and_may_read_meanwhile()
    {
        using (var first = _shelf.Begun(Shelf.Saltmarrow))
        {
            first.Change(Shelf.WithLeds(first.Town, 9), "Nine");
            var problem = Shelf.Refused(WorkingFile.Open(_shelf.Town, TimeProvider.System));
            Assert.Equal("open-elsewhere", problem.Rule);
            Assert.StartsWith($"saltmarrow.town is being worked on by another Duskwright: process {Environment.ProcessId} on {Environment.MachineName}, since ", problem.Message, StringComparison.Ordinal);
            Assert.Equal(first.Town, WorkingFile.Read(_shelf.Town).Town);
        }

        using var second = _shelf.Opened();
        Assert.Equal(9, second.Town.Buildings[0].Leds);
    }

    [Fact]
    public void A_glance_tells_the_name_and_the_houses_as_they_stand_also_while_another_is_at_work_and_leaves_no_trace()
    {
        using (var first = _shelf.Begun(Shelf.Saltmarrow))
        {
            first.Change(first.Town with { Name = "Salt \"marrow\"", Buildings = first.Town.Buildings.Take(2).ToItemList() }, "Two");
            Assert.Equal(new TownGlance("Salt \"marrow\"", 2, null), WorkingFile.Glance(_shelf.Town));
            first.Change(first.Town with { Buildings = [] }, "None");
        }

        var there = Directory.GetFiles(_shelf.Folder).Order(StringComparer.Ordinal);
        Assert.Equal(0, WorkingFile.Glance(_shelf.Town).Houses);
        Assert.Equal(there, Directory.GetFiles(_shelf.Folder).Order(StringComparer.Ordinal));
        Assert.Equal("no-file", WorkingFile.Glance(_shelf.At("nothing.town")).Problem!.Rule);
    }

    [Fact]
    public void Who_comes_second_is_told_where_the_first_is_found_until_that_has_closed()
    {
        using (var first = _shelf.Begun(Shelf.Saltmarrow))
        {
            first.SayWhere("http://127.0.0.1:5187");
            var problem = Shelf.Refused(WorkingFile.Open(_shelf.Town, TimeProvider.System));
            Assert.EndsWith(", at http://127.0.0.1:5187/.", problem.Message, StringComparison.Ordinal);
            Assert.Equal(5187, Holder.Of(_shelf.Town)!.Link!.Port);
        }

        Assert.Null(Holder.Of(_shelf.Town));
    }

    [Fact]
    public void Closed_twice_it_lets_go_once_and_leaves_the_next_who_has_it_alone()
    {
        var first = _shelf.Begun(Shelf.Saltmarrow);
        first.Dispose();
        using var next = WorkingFile.Open(_shelf.Town, TimeProvider.System).File!;
        next.SayWhere("http://127.0.0.1:5187");
        first.Dispose();
        Assert.Equal(5187, Holder.Of(_shelf.Town)!.Link!.Port);
        Assert.Equal("open-elsewhere", Shelf.Refused(WorkingFile.Open(_shelf.Town, TimeProvider.System)).Rule);
    }

    // What lies beside a town may have been put there by anybody.
    [Theory]
    [InlineData("{")]
    [InlineData("[1]")]
    [InlineData("null")]
    [InlineData("{\"Process\":1,\"Machine\":\"tern\",\"Since\":\"2026-11-26T03:00:00Z\",\"Address\":\"http://town.example/\"}")]
    [InlineData("{\"Process\":1,\"Machine\":\"tern\",\"Since\":\"2026-11-26T03:00:00Z\",\"Address\":\"javascript:alert(1)\"}")]
    public void Nobody_is_sent_to_another_machine(string said)
    {
        using var first = _shelf.Begun(Shelf.Saltmarrow);
        File.WriteAllText($"{_shelf.Town}-holder", said);
        Assert.Null(Holder.Of(_shelf.Town)?.Link);
        Assert.Equal("open-elsewhere", Shelf.Refused(WorkingFile.Open(_shelf.Town, TimeProvider.System)).Rule);
    }

    [Fact]
    public void Reading_leaves_the_folder_as_it_was()
    {
        _shelf.Fill(3);
        File.Delete(_shelf.At("saltmarrow.town-lock"));
        var before = File.ReadAllBytes(_shelf.Town);
        Assert.Equal(3, WorkingFile.Read(_shelf.Town).Town!.Buildings[0].Leds);
        Assert.Equal([_shelf.Town], Directory.GetFiles(_shelf.Folder));
        Assert.Equal(before, File.ReadAllBytes(_shelf.Town));
    }

    [Fact]
    public void A_file_left_by_a_killed_program_has_its_last_edit()
    {
        using var file = _shelf.Begun(Shelf.Saltmarrow);
        file.Change(Shelf.WithLeds(file.Town, 9), "Nine");
        File.Copy(_shelf.Town, _shelf.At("left.town"));
        File.Copy($"{_shelf.Town}-wal", _shelf.At("left.town-wal"));

        using var left = Shelf.Sound(WorkingFile.Open(_shelf.At("left.town"), TimeProvider.System));
        Assert.Equal(file.Town, left.Town);
        Assert.Equal("Nine", left.Head.Label);
    }

    [Fact]
    public void A_file_of_an_older_step_is_brought_up_and_a_copy_of_it_kept()
    {
        BeginAtStepOne();
        var old = WorkingFile.Read(_shelf.Town).Town;
        using (var file = _shelf.Opened())
        {
            Assert.Equal(Shelf.Saltmarrow, file.Town);
            Assert.Empty(file.NamePoint("as it was"));
        }

        var copy = _shelf.At("saltmarrow.town.before-step-2");
        Assert.Equal(Shelf.Saltmarrow, old);
        Assert.Equal(Shelf.Saltmarrow, WorkingFile.Read(copy).Town);
        using var kept = Connections.ToLook(copy, writerElsewhere: false);
        Assert.Equal(1, SchemaSteps.Ran(kept));
        using var now = Connections.ToLook(_shelf.Town, writerElsewhere: false);
        Assert.Equal(SchemaSteps.All.Select(s => (s.Number, s.Name)), now.All("SELECT number, name FROM step ORDER BY number", r => (r.GetInt32(0), r.GetString(1))));
    }

    // Standing in for a full disk: SQLite gives the same answer when its own limit of pages is met. The real program meets a real one in CommandLineTests.
    [Fact]
    public void A_full_disk_refuses_the_edit_and_keeps_everything_before_it()
    {
        using (var file = _shelf.Begun(Shelf.Saltmarrow))
        {
            file.Change(Shelf.WithLeds(file.Town, 9), "Nine");
            var before = file.Town;
            file.Connection.Run("PRAGMA max_page_count = 1");
            var problem = Assert.Single(file.Change(before with { Note = new string('n', 100_000) }, "A long note"));
            Assert.Equal(("disk-full", "saltmarrow.town could not take the change: the disk is full."), (problem.Rule, problem.Message));
            Assert.Equal((before, "Nine"), (file.Town, file.Head.Label));

            file.Connection.Run("PRAGMA max_page_count = 1000000");
            Assert.Empty(file.Change(before with { Note = "short" }, "A short note"));
        }

        using var again = _shelf.Opened();
        Assert.Equal("short", again.Town.Note);
        again.Undo();
        Assert.Equal(9, again.Town.Buildings[0].Leds);
    }

    [Fact]
    public void A_folder_that_may_only_be_read_is_said_to_be_so()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() || Environment.IsPrivilegedProcess, "Whoever runs this may write everywhere; CommandLineTests uses a folder mounted for reading.");
        _shelf.Fill(1);
        File.Delete(_shelf.At("saltmarrow.town-lock"));
#pragma warning disable CA1416 // skipped there
        File.SetUnixFileMode(_shelf.Folder, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        try
        {
            Assert.Equal("not-writable", Shelf.Refused(WorkingFile.Open(_shelf.Town, TimeProvider.System)).Rule);
            Assert.Equal("not-writable", Shelf.Refused(WorkingFile.Create(_shelf.At("new.town"), Shelf.Saltmarrow, "Begin", TimeProvider.System)).Rule);
            Assert.NotNull(WorkingFile.Read(_shelf.Town).Town);
        }
        finally
        {
            File.SetUnixFileMode(_shelf.Folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
#pragma warning restore CA1416
    }

    [Fact]
    public void A_new_file_does_not_replace_one_that_is_there()
    {
        File.WriteAllText(_shelf.Town, "precious");
        Assert.Equal("already-there", Shelf.Refused(WorkingFile.Create(_shelf.Town, Shelf.Saltmarrow, "Begin", TimeProvider.System)).Rule);
        Assert.Equal("precious", File.ReadAllText(_shelf.Town));
        Assert.Equal([_shelf.Town], Directory.GetFiles(_shelf.Folder));
    }

    private void BeginAtStepOne()
    {
        _shelf.Begun(Shelf.Saltmarrow).Dispose();
        using var newer = Connections.ToLook(_shelf.Town, writerElsewhere: false);
        var rows = newer.All("SELECT path, value FROM entity", r => (r.GetString(0), r.GetString(1)));
        var mark = newer.One("SELECT document_sha256 FROM revision", r => r.GetFieldValue<byte[]>(0));
        newer.Dispose();
        File.Delete(_shelf.Town);
        using var old = Connections.ToMake(_shelf.Town);
        using var transaction = old.BeginTransaction();
        old.Run($"PRAGMA application_id = {FileHead.ApplicationId}");
        SchemaSteps.Run(old, TimeProvider.System, upTo: 1);
        old.Run("INSERT INTO revision VALUES (1, NULL, 'Begin', '2026-01-01T00:00:00.0000000+00:00', @mark)", ("@mark", mark));
        old.Run("INSERT INTO head VALUES (1, 1)");
        foreach (var (path, value) in rows)
        {
            old.Run("INSERT INTO entity VALUES (@path, @value)", ("@path", path), ("@value", value));
        }

        transaction.Commit();
    }
}
