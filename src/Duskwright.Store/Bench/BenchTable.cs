using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Store.Opening;
using Microsoft.Data.Sqlite;

namespace Duskwright.Store.Bench;

/// <summary>Bench entries, in the file: amperes and volts in columns of their own, so that readings can be asked for by any tool.</summary>
internal static class BenchTable
{
    internal static ItemList<BenchEntry> All(SqliteConnection connection) =>
        connection.All(
            "SELECT key, received_at, day, kind, building, supply, current_a, voltage_v, lit, note FROM bench_entry ORDER BY received_at, key",
            r => new BenchEntry(
                r.GetString(0),
                new LogEntry
                {
                    Date = DateOnly.ParseExact(r.GetString(2), "O", CultureInfo.InvariantCulture),
                    Kind = Enum.Parse<LogKind>(r.GetString(3)),
                    Building = r.TextOrNull(4),
                    Supply = r.TextOrNull(5),
                    Current = r.IsDBNull(6) ? null : Current.FromAmperes(r.GetDouble(6)),
                    Voltage = r.IsDBNull(7) ? null : Voltage.FromVolts(r.GetDouble(7)),
                    Lit = r.IsDBNull(8) ? null : r.GetInt32(8),
                    Note = r.TextOrNull(9),
                },
                r.Time(1))).ToItemList();

    internal static bool Has(SqliteConnection connection, string key) =>
        connection.One("SELECT count(*) FROM bench_entry WHERE key = @key", r => r.GetInt64(0), ("@key", key)) > 0;

    internal static void Add(SqliteConnection connection, BenchEntry sent) =>
        connection.Run(
            "INSERT INTO bench_entry VALUES (@key, @received_at, @day, @kind, @building, @supply, @current_a, @voltage_v, @lit, @note)",
            ("@key", sent.Key),
            ("@received_at", sent.ReceivedAt.Stamp()),
            ("@day", sent.Entry.Date.ToString("O", CultureInfo.InvariantCulture)),
            ("@kind", sent.Entry.Kind.ToString()),
            ("@building", sent.Entry.Building),
            ("@supply", sent.Entry.Supply),
            ("@current_a", sent.Entry.Current?.Amperes),
            ("@voltage_v", sent.Entry.Voltage?.Volts),
            ("@lit", sent.Entry.Lit),
            ("@note", sent.Entry.Note));
}
