using Duskwright.Store.Opening;
using Microsoft.Data.Sqlite;

namespace Duskwright.Store.Exchange;

/// <summary>The files a town was read from, in its working file: the same file is not taken in twice.</summary>
internal static class OriginTable
{
    internal static bool Has(SqliteConnection connection, string name, byte[] mark) =>
        connection.One("SELECT count(*) FROM origin WHERE path = @path AND sha256 = @sha256", r => r.GetInt64(0), ("@path", name), ("@sha256", mark)) > 0;

    internal static void Set(SqliteConnection connection, string name, byte[] mark, DateTimeOffset now) =>
        connection.Run(
            "INSERT INTO origin VALUES (@path, @sha256, @read_at) ON CONFLICT (path) DO UPDATE SET sha256 = @sha256, read_at = @read_at",
            ("@path", name), ("@sha256", mark), ("@read_at", now.Stamp()));
}
