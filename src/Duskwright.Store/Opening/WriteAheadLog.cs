namespace Duskwright.Store.Opening;

/// <summary>The log that SQLite keeps beside a file in use; it belongs to the file until it has been taken in.</summary>
internal static class WriteAheadLog
{
    internal static bool HoldsPages(string path) => new FileInfo($"{path}-wal") is { Exists: true, Length: > 0 };
}
