using Duskwright.Plan;
using Duskwright.Store.Opening;
using Microsoft.Data.Sqlite;

namespace Duskwright.Store.History;

/// <summary>Named points in time, in the file.</summary>
internal static class PointTable
{
    internal static ItemList<NamedPoint> All(SqliteConnection connection) =>
        connection.All("SELECT name, revision, made_at FROM point ORDER BY made_at, name", r => new NamedPoint(r.GetString(0), r.GetInt64(1), r.Time(2))).ToItemList();

    internal static void Set(SqliteConnection connection, NamedPoint point) =>
        connection.Run(
            "INSERT INTO point VALUES (@name, @revision, @made_at) ON CONFLICT (name) DO UPDATE SET revision = @revision, made_at = @made_at",
            ("@name", point.Name), ("@revision", point.Revision), ("@made_at", point.MadeAt.Stamp()));
}
