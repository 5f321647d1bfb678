using System.Globalization;
using System.Text.Json;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Store.Opening;
using Microsoft.Data.Sqlite;

namespace Duskwright.Store.Bench;

/// <summary>Bench entries, in the file: readings in columns of their own with their unit, so that any tool can ask for them.</summary>
internal static class BenchTable
{
    private const string Columns = """
        key, received_at, day, kind, building, supply, current_a, voltage_v, lit, note,
        time, step, test, passed, looks, resistance_ohm, diode_voltage_v, burnt_h, despite, corrects,
        resistance_over, diode_over, reversed, photograph
        """;

    internal static ItemList<BenchEntry> All(SqliteConnection connection) =>
        connection.All(
            $"SELECT {Columns} FROM bench_entry ORDER BY received_at, key",
            r => new BenchEntry(
                r.GetString(0),
                new LogEntry
                {
                    Id = r.GetString(0),
                    Date = DateOnly.ParseExact(r.GetString(2), "O", CultureInfo.InvariantCulture),
                    Kind = Enum.Parse<LogKind>(r.GetString(3)),
                    Building = r.TextOrNull(4),
                    Supply = r.TextOrNull(5),
                    Current = Number(r, 6) is { } amperes ? Current.FromAmperes(amperes) : null,
                    Voltage = Number(r, 7) is { } volts ? Voltage.FromVolts(volts) : null,
                    Lit = r.IsDBNull(8) ? null : r.GetInt32(8),
                    Note = r.TextOrNull(9),
                    Time = r.TextOrNull(10) is { } time ? TimeOnly.ParseExact(time, "O", CultureInfo.InvariantCulture) : null,
                    Step = r.TextOrNull(11),
                    Test = r.TextOrNull(12),
                    Passed = r.IsDBNull(13) ? null : r.GetBoolean(13),
                    Looks = r.TextOrNull(14) is { } looks ? Looks(looks) : [],
                    Resistance = Number(r, 15) is { } ohms ? Resistance.FromOhms(ohms) : null,
                    DiodeVoltage = Number(r, 16) is { } diode ? Voltage.FromVolts(diode) : null,
                    Burnt = Number(r, 17) is { } hours ? Duration.FromHours(hours) : null,
                    Despite = r.TextOrNull(18),
                    Corrects = r.TextOrNull(19),
                    ResistanceOver = !r.IsDBNull(20),
                    DiodeOver = !r.IsDBNull(21),
                    Reversed = !r.IsDBNull(22),
                    Photograph = r.TextOrNull(23),
                },
                r.Time(1))).ToItemList();

    internal static bool Has(SqliteConnection connection, string key) =>
        connection.One("SELECT count(*) FROM bench_entry WHERE key = @key", r => r.GetInt64(0), ("@key", key)) > 0;

    internal static void Add(SqliteConnection connection, BenchEntry sent) =>
        connection.Run(
            $"""
            INSERT INTO bench_entry ({Columns}) VALUES (@key, @received_at, @day, @kind, @building, @supply, @current_a, @voltage_v, @lit, @note,
            @time, @step, @test, @passed, @looks, @resistance_ohm, @diode_voltage_v, @burnt_h, @despite, @corrects,
            @resistance_over, @diode_over, @reversed, @photograph)
            """,
            ("@key", sent.Key),
            ("@received_at", sent.ReceivedAt.Stamp()),
            ("@day", sent.Entry.Date.ToString("O", CultureInfo.InvariantCulture)),
            ("@kind", sent.Entry.Kind.ToString()),
            ("@building", sent.Entry.Building),
            ("@supply", sent.Entry.Supply),
            ("@current_a", sent.Entry.Current?.Amperes),
            ("@voltage_v", sent.Entry.Voltage?.Volts),
            ("@lit", sent.Entry.Lit),
            ("@note", sent.Entry.Note),
            ("@time", sent.Entry.Time?.ToString("O", CultureInfo.InvariantCulture)),
            ("@step", sent.Entry.Step),
            ("@test", sent.Entry.Test),
            ("@passed", sent.Entry.Passed),
            ("@looks", sent.Entry.Looks.Count == 0 ? null : JsonSerializer.Serialize(sent.Entry.Looks.ToDictionary(l => l.Lamp, l => l.As.ToString()))),
            ("@resistance_ohm", sent.Entry.Resistance?.Ohms),
            ("@diode_voltage_v", sent.Entry.DiodeVoltage?.Volts),
            ("@burnt_h", sent.Entry.Burnt?.Hours),
            ("@despite", sent.Entry.Despite),
            ("@corrects", sent.Entry.Corrects),
            ("@resistance_over", Mark(sent.Entry.ResistanceOver)),
            ("@diode_over", Mark(sent.Entry.DiodeOver)),
            ("@reversed", Mark(sent.Entry.Reversed)),
            ("@photograph", sent.Entry.Photograph));

    /// <summary>What an entry is called in the history.</summary>
    internal static string Words(LogKind kind) => kind switch
    {
        LogKind.StepDone => "step",
        LogKind.CellsChanged => "change of cells",
        LogKind.CellsOut => "storing",
        LogKind.Burnt => "number of hours",
        LogKind.Withdrawn => "correction",
        _ => kind.ToString().ToLowerInvariant(),
    };

    private static int? Mark(bool so) => so ? 1 : null;

    private static double? Number(SqliteDataReader row, int column) => row.IsDBNull(column) ? null : row.GetDouble(column);

    private static ItemList<LampSeen> Looks(string text) => JsonSerializer.Deserialize<Dictionary<string, string>>(text)!
        .Select(l => new LampSeen { Lamp = l.Key, As = Enum.Parse<SeenAs>(l.Value) }).ToItemList();
}
