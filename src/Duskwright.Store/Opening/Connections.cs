using Microsoft.Data.Sqlite;

namespace Duskwright.Store.Opening;

/// <summary>The ways a file is opened.</summary>
internal static class Connections
{
    /// <summary>To look, leaving no trace beside the file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="writerElsewhere">Whether somebody is at work on it.</param>
    /// <returns>An open connection.</returns>
    internal static SqliteConnection ToLook(string path, bool writerElsewhere) =>
        // "Immutable" reads the file alone; where a log lies beside it or is about to, the log must be read too.
        Opened(writerElsewhere || WriteAheadLog.HoldsPages(path)
            ? new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadOnly }
            : new SqliteConnectionStringBuilder { DataSource = $"{new Uri(path).AbsoluteUri}?immutable=1", Mode = SqliteOpenMode.ReadOnly });

    /// <summary>To change: a change is on the disk when it is acknowledged.</summary>
    /// <param name="path">The file, already sound.</param>
    /// <returns>An open connection.</returns>
    internal static SqliteConnection ToChange(string path)
    {
        var connection = Opened(new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadWrite });
        try
        {
            // The full flush is for macOS, where a plain one stops at the drive's own memory.
            connection.Run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA fullfsync = ON; PRAGMA checkpoint_fullfsync = ON; PRAGMA foreign_keys = ON");
            return connection;
        }
        catch (SqliteException)
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>To make a file that is not there yet.</summary>
    /// <param name="path">Where.</param>
    /// <returns>An open connection.</returns>
    internal static SqliteConnection ToMake(string path)
    {
        var connection = Opened(new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadWriteCreate });
        connection.Run("PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON");
        return connection;
    }

    private static SqliteConnection Opened(SqliteConnectionStringBuilder to)
    {
        // A pooled connection would stay open, and its locks with it, after the file has been closed.
        to.Pooling = false;
        to.DefaultTimeout = 5;
        var connection = new SqliteConnection(to.ToString());
        try
        {
            connection.Open();
            return connection;
        }
        catch (SqliteException)
        {
            connection.Dispose();
            throw;
        }
    }
}
