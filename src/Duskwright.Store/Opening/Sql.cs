using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Duskwright.Store.Opening;

/// <summary>Statements with their values.</summary>
internal static class Sql
{
    internal static int Run(this SqliteConnection connection, string sql, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        using var command = Prepared(connection, sql, values);
        return command.ExecuteNonQuery();
    }

    internal static List<T> All<T>(this SqliteConnection connection, string sql, Func<SqliteDataReader, T> row, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        using var command = Prepared(connection, sql, values);
        using var reader = command.ExecuteReader();
        var rows = new List<T>();
        while (reader.Read())
        {
            rows.Add(row(reader));
        }

        return rows;
    }

    internal static T One<T>(this SqliteConnection connection, string sql, Func<SqliteDataReader, T> row, params ReadOnlySpan<(string Name, object? Value)> values) =>
        connection.All(sql, row, values).Single();

    internal static string? TextOrNull(this SqliteDataReader reader, int column) => reader.IsDBNull(column) ? null : reader.GetString(column);

    /// <summary>The time as it is kept in the file: UTC, to the last digit.</summary>
    /// <param name="time">The time.</param>
    /// <returns>ISO 8601.</returns>
    internal static string Stamp(this DateTimeOffset time) => time.ToUniversalTime().ToString("O", CultureInfo.InvariantCulture);

    internal static DateTimeOffset Time(this SqliteDataReader reader, int column) => DateTimeOffset.Parse(reader.GetString(column), CultureInfo.InvariantCulture);

    // The statements are this room's own constants; what comes from outside is always a value.
#pragma warning disable CA2100
    private static SqliteCommand Prepared(SqliteConnection connection, string sql, ReadOnlySpan<(string Name, object? Value)> values)
    {
        var command = connection.CreateCommand();
        command.CommandText = sql;
#pragma warning restore CA2100
        foreach (var (name, value) in values)
        {
            command.Parameters.AddWithValue(name, value ?? DBNull.Value);
        }

        return command;
    }
}
