using System.Buffers.Binary;
using Duskwright.Plan.Checks;
using Duskwright.Store.Opening;
using Duskwright.Store.Schema;

namespace Duskwright.Store.Tests.Opening;

public sealed class UnfitFileTests : IDisposable
{
    private readonly Shelf _shelf = new();

    public void Dispose() => _shelf.Dispose();

    [Fact]
    public void A_file_that_ends_too_early_is_refused_wherever_it_ends()
    {
        _shelf.Fill(5);
        var whole = File.ReadAllBytes(_shelf.Town);
        for (var length = 0; length < whole.Length; length += Math.Max(1, whole.Length / 30))
        {
            Assert.Contains(RefusedAndUntouched(whole[..length]).Rule, (string[])["cut-short", "not-a-town"]);
        }

        var problem = RefusedAndUntouched(whole[..^1]);
        Assert.Equal($"saltmarrow.town ends too early: it has {whole.Length - 1} of {whole.Length} bytes.", problem.Message);
    }

    [Fact]
    public void A_damaged_file_is_refused_or_gives_the_very_town_that_was_written()
    {
        _shelf.Fill(5);
        var whole = File.ReadAllBytes(_shelf.Town);
        var town = WorkingFile.Read(_shelf.Town).Town;
        var refused = 0;
        var seed = new Random(20260301);
        for (var turn = 0; turn < 80; turn++)
        {
            var bytes = (byte[])whole.Clone();
            bytes[seed.Next(bytes.Length)] ^= (byte)(1 << seed.Next(8));
            File.WriteAllBytes(_shelf.Town, bytes);
            var result = WorkingFile.Open(_shelf.Town, TimeProvider.System);
            if (result.File is { } file)
            {
                Assert.Equal(town, file.Town);
                file.Dispose();
            }
            else
            {
                refused++;
                Assert.Single(result.Problems);
                Assert.Equal(bytes, File.ReadAllBytes(_shelf.Town));
            }
        }

        Assert.True(refused > 0);
    }

    [Fact]
    public void A_page_of_rubbish_is_said_to_be_damage()
    {
        _shelf.Fill(5);
        var bytes = File.ReadAllBytes(_shelf.Town);
        new Random(7).NextBytes(bytes.AsSpan(4096));
        var problem = RefusedAndUntouched(bytes);
        Assert.Equal(("damaged", "saltmarrow.town is damaged: what it holds is not what was written."), (problem.Rule, problem.Message));
    }

    [Fact]
    public void One_letter_changed_inside_the_document_is_damage()
    {
        _shelf.Fill(1);
        using (var connection = Connections.ToChange(_shelf.Town))
        {
            connection.Run("UPDATE entity SET value = '\"Saltmarsh\"' WHERE path = 'name'");
        }

        Assert.Equal("damaged", RefusedAndUntouched(File.ReadAllBytes(_shelf.Town)).Rule);
    }

    [Fact]
    public void A_newer_file_is_left_alone()
    {
        _shelf.Fill(1);
        var bytes = File.ReadAllBytes(_shelf.Town);
        BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(60), SchemaSteps.Newest + 1);
        var problem = RefusedAndUntouched(bytes);
        Assert.Equal($"saltmarrow.town was written by a newer Duskwright (step {SchemaSteps.Newest + 1}); this one knows the steps up to {SchemaSteps.Newest}.", problem.Message);
    }

    [Fact]
    public void A_newer_step_in_the_journal_is_enough_to_be_left_alone()
    {
        _shelf.Fill(1);
        using (var connection = Connections.ToChange(_shelf.Town))
        {
            connection.Run("INSERT INTO step VALUES (99, 'from tomorrow', '2030-01-01')");
        }

        Assert.Equal("newer-version", RefusedAndUntouched(File.ReadAllBytes(_shelf.Town)).Rule);
    }

    [Fact]
    public void A_database_of_another_program_is_no_town()
    {
        using (var other = Connections.ToMake(_shelf.Town))
        {
            other.Run("CREATE TABLE recipe (name TEXT)");
        }

        Assert.Equal("saltmarrow.town is not a town.", RefusedAndUntouched(File.ReadAllBytes(_shelf.Town)).Message);
    }

    [Fact]
    public void A_town_without_its_tables_is_damaged()
    {
        using (var bare = Connections.ToMake(_shelf.Town))
        {
            bare.Run($"PRAGMA application_id = {FileHead.ApplicationId}");
        }

        Assert.Equal("damaged", RefusedAndUntouched(File.ReadAllBytes(_shelf.Town)).Rule);
    }

    [Fact]
    public void A_file_that_is_not_there_is_named_with_its_folder()
    {
        var problem = Shelf.Refused(WorkingFile.Open(_shelf.Town, TimeProvider.System));
        Assert.Equal(("no-file", $"There is no file saltmarrow.town in {_shelf.Folder}."), (problem.Rule, problem.Message));
        Assert.Empty(Directory.GetFiles(_shelf.Folder));
    }

    private Problem RefusedAndUntouched(byte[] bytes)
    {
        File.WriteAllBytes(_shelf.Town, bytes);
        var looked = WorkingFile.Read(_shelf.Town);
        var problem = Shelf.Refused(WorkingFile.Open(_shelf.Town, TimeProvider.System));
        Assert.Equal([problem], looked.Problems);
        Assert.Equal(bytes, File.ReadAllBytes(_shelf.Town));
        Assert.DoesNotContain(Directory.GetFiles(_shelf.Folder), f => f.EndsWith("-wal", StringComparison.Ordinal) || f.EndsWith("-shm", StringComparison.Ordinal) || f.EndsWith("-journal", StringComparison.Ordinal));
        return problem;
    }
}
