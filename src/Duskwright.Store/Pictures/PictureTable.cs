using System.Security.Cryptography;
using Duskwright.Plan;
using Duskwright.Store.Opening;
using Microsoft.Data.Sqlite;

namespace Duskwright.Store.Pictures;

/// <summary>Pictures, in the file.</summary>
internal static class PictureTable
{
    internal static ItemList<Picture> All(SqliteConnection connection) =>
        connection.All(
            "SELECT sha256, name, media_type, length(bytes), added_at FROM picture ORDER BY added_at, name",
            r => new Picture(Convert.ToHexStringLower(r.GetFieldValue<byte[]>(0)), r.GetString(1), r.GetString(2), r.GetInt64(3), r.Time(4))).ToItemList();

    internal static byte[]? Bytes(SqliteConnection connection, string id) =>
        connection.All("SELECT bytes FROM picture WHERE lower(hex(sha256)) = @id", r => r.GetFieldValue<byte[]>(0), ("@id", id)).SingleOrDefault();

    /// <summary>Adds a picture; one that is there already stays as it is.</summary>
    /// <param name="connection">The file.</param>
    /// <param name="name">What the maker calls it.</param>
    /// <param name="mediaType">What it is.</param>
    /// <param name="bytes">The picture.</param>
    /// <param name="now">When.</param>
    internal static void Add(SqliteConnection connection, string name, string mediaType, byte[] bytes, DateTimeOffset now) =>
        connection.Run(
            "INSERT INTO picture VALUES (@sha256, @name, @media_type, @bytes, @added_at) ON CONFLICT (sha256) DO NOTHING",
            ("@sha256", SHA256.HashData(bytes)), ("@name", name), ("@media_type", mediaType), ("@bytes", bytes), ("@added_at", now.Stamp()));
}
