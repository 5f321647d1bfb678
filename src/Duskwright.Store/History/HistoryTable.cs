using Duskwright.Store.Opening;
using Microsoft.Data.Sqlite;

namespace Duskwright.Store.History;

/// <summary>Revisions, their changes, and the pieces as they stand, in the file. Nothing here is ever taken out: undo moves the head.</summary>
internal static class HistoryTable
{
    private const string Columns = "id, parent, label, made_at";

    internal static SortedDictionary<string, string> Pieces(SqliteConnection connection)
    {
        var pieces = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var (path, value) in connection.All("SELECT path, value FROM entity", r => (r.GetString(0), r.GetString(1))))
        {
            pieces.Add(path, value);
        }

        return pieces;
    }

    /// <summary>One piece as it stands.</summary>
    /// <param name="connection">The file.</param>
    /// <param name="path">Its path.</param>
    /// <returns>Its value; none where there is no such piece.</returns>
    internal static string? Piece(SqliteConnection connection, string path) =>
        connection.All("SELECT value FROM entity WHERE path = @path", r => r.GetString(0), ("@path", path)).SingleOrDefault();

    /// <summary>How many items a list has as it stands.</summary>
    /// <param name="connection">The file.</param>
    /// <param name="field">The list.</param>
    /// <returns>Their number; the path of their order, which ends in the slash, is none of them.</returns>
    internal static int Count(SqliteConnection connection, string field) =>
        (int)connection.One("SELECT count(*) FROM entity WHERE path > @list AND path < @end", r => r.GetInt64(0), ("@list", $"{field}/"), ("@end", $"{field}0"));

    internal static Revision Head(SqliteConnection connection) =>
        connection.One($"SELECT {Columns} FROM revision WHERE id = (SELECT revision FROM head)", Row);

    internal static Revision? Find(SqliteConnection connection, long id) =>
        connection.All($"SELECT {Columns} FROM revision WHERE id = @id", Row, ("@id", id)).SingleOrDefault();

    /// <summary>The revision that redo leads to: the newest made from this one.</summary>
    /// <param name="connection">The file.</param>
    /// <param name="id">The revision stood on.</param>
    /// <returns>The revision; none where nothing was taken back.</returns>
    internal static Revision? Next(SqliteConnection connection, long id) =>
        connection.All($"SELECT {Columns} FROM revision WHERE parent = @id ORDER BY id DESC LIMIT 1", Row, ("@id", id)).SingleOrDefault();

    internal static List<Revision> Newest(SqliteConnection connection, int most) =>
        connection.All($"SELECT {Columns} FROM revision ORDER BY id DESC LIMIT @most", Row, ("@most", most));

    /// <summary>The mark of the pieces as they stand.</summary>
    /// <param name="connection">The file.</param>
    /// <returns>The mark; none in a file that has lost its head.</returns>
    internal static byte[]? HeadMark(SqliteConnection connection) =>
        connection.All("SELECT document_sha256 FROM revision WHERE id = (SELECT revision FROM head)", r => r.GetFieldValue<byte[]>(0)).SingleOrDefault();

    internal static byte[] Mark(SqliteConnection connection, long id) =>
        connection.One("SELECT document_sha256 FROM revision WHERE id = @id", r => r.GetFieldValue<byte[]>(0), ("@id", id));

    internal static List<EntityChange> Changes(SqliteConnection connection, long id) =>
        connection.All("SELECT path, before, after FROM change WHERE revision = @id", r => new EntityChange(r.GetString(0), r.TextOrNull(1), r.TextOrNull(2)), ("@id", id));

    /// <summary>The pieces as they were at another revision, walking back to the common ancestor and on from there.</summary>
    /// <param name="connection">The file.</param>
    /// <param name="pieces">The pieces at <paramref name="from"/>; not changed.</param>
    /// <param name="from">The revision the pieces belong to.</param>
    /// <param name="to">The revision wanted; it is there.</param>
    /// <returns>The pieces at <paramref name="to"/>.</returns>
    internal static SortedDictionary<string, string> At(SqliteConnection connection, SortedDictionary<string, string> pieces, long from, long to)
    {
        var there = new SortedDictionary<string, string>(pieces, StringComparer.Ordinal);
        var forward = new Stack<long>();

        // A revision is always newer than the one it was made from, so the newer of the two is the one to step back.
        while (from != to)
        {
            if (from > to)
            {
                Changes(connection, from).ForEach(c => c.Reversed.ApplyTo(there));
                from = Find(connection, from)!.Parent!.Value;
            }
            else
            {
                forward.Push(to);
                to = Find(connection, to)!.Parent!.Value;
            }
        }

        foreach (var id in forward)
        {
            Changes(connection, id).ForEach(c => c.ApplyTo(there));
        }

        return there;
    }

    internal static Revision Add(SqliteConnection connection, long? parent, string label, DateTimeOffset now, byte[] mark, IEnumerable<EntityChange> changes)
    {
        var id = connection.One(
            "INSERT INTO revision (parent, label, made_at, document_sha256) VALUES (@parent, @label, @made_at, @mark) RETURNING id",
            r => r.GetInt64(0),
            ("@parent", parent), ("@label", label), ("@made_at", now.Stamp()), ("@mark", mark));
        foreach (var change in changes)
        {
            connection.Run(
                "INSERT INTO change VALUES (@revision, @path, @before, @after)",
                ("@revision", id), ("@path", change.Path), ("@before", change.Before), ("@after", change.After));
        }

        return new Revision(id, parent, label, now);
    }

    internal static void MoveHead(SqliteConnection connection, long id, IEnumerable<EntityChange> changes)
    {
        foreach (var change in changes)
        {
            _ = change.After is null
                ? connection.Run("DELETE FROM entity WHERE path = @path", ("@path", change.Path))
                : connection.Run("INSERT INTO entity VALUES (@path, @value) ON CONFLICT (path) DO UPDATE SET value = @value", ("@path", change.Path), ("@value", change.After));
        }

        connection.Run("INSERT INTO head VALUES (1, @id) ON CONFLICT (only_row) DO UPDATE SET revision = @id", ("@id", id));
    }

    private static Revision Row(SqliteDataReader r) => new(r.GetInt64(0), r.IsDBNull(1) ? null : r.GetInt64(1), r.GetString(2), r.Time(3));
}
