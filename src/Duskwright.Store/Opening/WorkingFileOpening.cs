using System.Globalization;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Store.History;
using Duskwright.Store.Schema;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Duskwright.Store.Opening;

/// <summary>How a working file is made, opened and looked at. A file with a problem is left as it is, to the byte.</summary>
internal static class WorkingFileOpening
{
    internal static WorkingFileResult Create(string path, Town town, string label, TimeProvider clock) =>
        MadeAt(path, connection => Fill(connection, town, label, clock), clock);

    /// <summary>Keeps a town under a name it has not had yet, with its whole history.</summary>
    /// <param name="path">Where.</param>
    /// <param name="from">The file, or the memory, that holds it.</param>
    /// <param name="clock">The time.</param>
    /// <returns>The new file, open.</returns>
    internal static WorkingFileResult Copy(string path, SqliteConnection from, TimeProvider clock) =>
        MadeAt(path, from.BackupDatabase, clock);

    internal static WorkingFile InMemory(Town town, string label, TimeProvider clock)
    {
        var connection = Connections.ToMake(":memory:");
        Fill(connection, town, label, clock);
        return new WorkingFile(null, connection, null, clock);
    }

    private static WorkingFileResult MadeAt(string path, Action<SqliteConnection> fill, TimeProvider clock)
    {
        if (File.Exists(path))
        {
            return Refused(Refusal.AlreadyThere(path));
        }

        // Made whole beside its place and then moved there, so that no half-made file ever stands under the name.
        var aside = $"{path}.{Guid.NewGuid():N}.part";
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            using (var connection = Connections.ToMake(aside))
            {
                fill(connection);
            }

            File.Move(aside, path, overwrite: false);
        }
        catch (SqliteException failed)
        {
            return Refused(Refusal.From(path, failed));
        }
        catch (Exception taken) when (taken is IOException or UnauthorizedAccessException)
        {
            return Refused(File.Exists(path) ? Refusal.AlreadyThere(path) : Refusal.NotWritable(path, taken.Message));
        }
        finally
        {
            if (File.Exists(aside))
            {
                File.Delete(aside);
            }
        }

        return Open(path, clock);
    }

    internal static WorkingFileResult Open(string path, TimeProvider clock)
    {
        WriterLock? right = null;
        SqliteConnection? connection = null;
        try
        {
            if (Head(path) is { } unfit)
            {
                return Refused(unfit);
            }

            right = WriterLock.TryTake(path);
            if (right is null)
            {
                return Refused(Refusal.OpenElsewhere(path));
            }

            Town? town;
            using (var looking = Connections.ToLook(path, writerElsewhere: false))
            {
                (town, var problems) = SoundTown(path, looking);
                if (town is null)
                {
                    return new WorkingFileResult(null, problems);
                }

                if (SchemaSteps.Ran(looking) < SchemaSteps.Newest)
                {
                    // What a step makes of it is read again.
                    CopyAside(path, looking);
                    town = null;
                }
            }

            connection = Connections.ToChange(path);
            using (var transaction = connection.BeginTransaction())
            {
                // Runs also where no step is new: the first commit puts the folder's entry for the file on the disk.
                SchemaSteps.Run(connection, clock, SchemaSteps.Newest);
                transaction.Commit();
            }

            var file = new WorkingFile(path, connection, right, clock, town);
            Holder.Say(path, clock, null);
            (connection, right) = (null, null);
            return new WorkingFileResult(file, []);
        }
        catch (SqliteException failed)
        {
            return Refused(Refusal.From(path, failed));
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            return Refused(Refusal.NotWritable(path, refused.Message));
        }
        finally
        {
            connection?.Dispose();
            right?.Dispose();
        }
    }

    internal static TownReadResult Read(string path) => Looked(path, looking => SoundTown(path, looking), problem => new TownReadResult(null, [problem]));

    internal static TownGlance Glance(string path) => Looked(path, looking => Glance(path, looking), problem => new TownGlance(null, 0, problem));

    private static T Looked<T>(string path, Func<SqliteConnection, T> look, Func<Problem, T> refused)
    {
        if (Head(path) is { } unfit)
        {
            return refused(unfit);
        }

        try
        {
            using var right = TryToKeepOut(path, out var writerElsewhere);
            using var looking = Connections.ToLook(path, writerElsewhere);
            return look(looking);
        }
        catch (SqliteException failed)
        {
            return refused(failed.SqliteErrorCode is raw.SQLITE_CANTOPEN ? Refusal.NotReadable(path, failed) : Refusal.From(path, failed));
        }
    }

    private static TownGlance Glance(string path, SqliteConnection looking)
    {
        try
        {
            return HistoryTable.Piece(looking, "name") is { } name && Entities.Name(name) is { } called
                ? new TownGlance(called, HistoryTable.Count(looking, "buildings"), null)
                : new TownGlance(null, 0, Refusal.Damaged(path));
        }
        catch (SqliteException missing) when (missing.SqliteErrorCode == raw.SQLITE_ERROR)
        {
            // A table that every file has is not there.
            return new TownGlance(null, 0, Refusal.Damaged(path));
        }
    }

    private static void Fill(SqliteConnection connection, Town town, string label, TimeProvider clock)
    {
        using var transaction = connection.BeginTransaction();
        connection.Run(string.Create(CultureInfo.InvariantCulture, $"PRAGMA application_id = {FileHead.ApplicationId}"));
        SchemaSteps.Run(connection, clock, SchemaSteps.Newest);
        var pieces = Entities.Of(town);
        var changes = EntityChange.Between(new Dictionary<string, string>(), pieces);
        HistoryTable.MoveHead(connection, HistoryTable.Add(connection, null, label, clock.GetUtcNow(), Entities.Mark(pieces), changes).Id, changes);
        transaction.Commit();
    }

    private static Problem? Head(string path)
    {
        try
        {
            return File.Exists(path) ? FileHead.Check(path) : Refusal.NoFile(path);
        }
        catch (Exception kept) when (kept is IOException or UnauthorizedAccessException)
        {
            return Refusal.NotReadable(path, kept);
        }
    }

    // Where nothing may be written nobody writes, and there is nothing to keep out.
    private static WriterLock? TryToKeepOut(string path, out bool writerElsewhere)
    {
        writerElsewhere = false;
        try
        {
            // Looking leaves nothing behind: without its lock file nobody has ever been at work here.
            if (!File.Exists($"{path}-lock"))
            {
                return null;
            }

            var right = WriterLock.TryTake(path);
            writerElsewhere = right is null;
            return right;
        }
        catch (Exception readOnly) when (readOnly is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static TownReadResult SoundTown(string path, SqliteConnection looking)
    {
        using var moment = looking.BeginTransaction(deferred: true);
        try
        {
            if (SchemaSteps.Ran(looking) is var ran && ran > SchemaSteps.Newest)
            {
                return new TownReadResult(null, [Refusal.Newer(path, ran, SchemaSteps.Newest)]);
            }

            var pieces = HistoryTable.Pieces(looking);
            return looking.All("PRAGMA quick_check(1)", r => r.GetString(0)) is ["ok"] && HistoryTable.HeadMark(looking).AsSpan().SequenceEqual(Entities.Mark(pieces))
                ? Entities.Town(pieces)
                : new TownReadResult(null, [Refusal.Damaged(path)]);
        }
        catch (SqliteException missing) when (missing.SqliteErrorCode == raw.SQLITE_ERROR)
        {
            // A table that every file has is not there.
            return new TownReadResult(null, [Refusal.Damaged(path)]);
        }
    }

    private static void CopyAside(string path, SqliteConnection looking)
    {
        var stem = string.Create(CultureInfo.InvariantCulture, $"{path}.before-step-{SchemaSteps.Ran(looking) + 1}");
        var aside = stem;
        for (var number = 2; File.Exists(aside); number++)
        {
            aside = string.Create(CultureInfo.InvariantCulture, $"{stem}-{number}");
        }

        using var copy = Connections.ToMake(aside);
        looking.BackupDatabase(copy);
    }

    private static WorkingFileResult Refused(Problem problem) => new(null, [problem]);
}
