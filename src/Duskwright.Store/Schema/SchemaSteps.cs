using System.Globalization;
using Duskwright.Store.Opening;
using Microsoft.Data.Sqlite;

namespace Duskwright.Store.Schema;

/// <summary>The steps that make a working file, and the journal in the file of those that ran.</summary>
internal static class SchemaSteps
{
    internal static readonly SchemaStep[] All =
    [
        // An entity is a piece of the document, its value JSON; a change keeps the piece as it was and as it became.
        new(1, "document and history", """
            CREATE TABLE revision (
              id INTEGER PRIMARY KEY, parent INTEGER REFERENCES revision, label TEXT NOT NULL, made_at TEXT NOT NULL, document_sha256 BLOB NOT NULL
            ) STRICT;
            CREATE INDEX revision_parent ON revision (parent);
            CREATE TABLE change (
              revision INTEGER NOT NULL REFERENCES revision, path TEXT NOT NULL, before TEXT, after TEXT, PRIMARY KEY (revision, path)
            ) STRICT, WITHOUT ROWID;
            CREATE TABLE entity (path TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
            CREATE TABLE head (only_row INTEGER PRIMARY KEY CHECK (only_row = 1), revision INTEGER NOT NULL REFERENCES revision) STRICT;
            """),
        new(2, "named points in time", """
            CREATE TABLE point (name TEXT PRIMARY KEY, revision INTEGER NOT NULL REFERENCES revision, made_at TEXT NOT NULL) STRICT;
            """),
        new(3, "pictures", """
            CREATE TABLE picture (sha256 BLOB PRIMARY KEY, name TEXT NOT NULL, media_type TEXT NOT NULL, bytes BLOB NOT NULL, added_at TEXT NOT NULL) STRICT;
            """),
        new(4, "bench entries", """
            CREATE TABLE bench_entry (
              key TEXT PRIMARY KEY, received_at TEXT NOT NULL, day TEXT NOT NULL, kind TEXT NOT NULL, building TEXT, supply TEXT,
              current_a REAL, voltage_v REAL, lit INTEGER, note TEXT
            ) STRICT;
            """),
        new(5, "files it was read from", """
            CREATE TABLE origin (path TEXT PRIMARY KEY, sha256 BLOB NOT NULL, read_at TEXT NOT NULL) STRICT;
            """),

        // What each lamp did is JSON, as in the document.
        new(6, "steps, tests and lamps in bench entries", """
            ALTER TABLE bench_entry ADD COLUMN time TEXT;
            ALTER TABLE bench_entry ADD COLUMN step TEXT;
            ALTER TABLE bench_entry ADD COLUMN test TEXT;
            ALTER TABLE bench_entry ADD COLUMN passed INTEGER;
            ALTER TABLE bench_entry ADD COLUMN looks TEXT;
            ALTER TABLE bench_entry ADD COLUMN resistance_ohm REAL;
            ALTER TABLE bench_entry ADD COLUMN diode_voltage_v REAL;
            ALTER TABLE bench_entry ADD COLUMN burnt_h REAL;
            ALTER TABLE bench_entry ADD COLUMN despite TEXT;
            ALTER TABLE bench_entry ADD COLUMN corrects TEXT;
            """),

        // 1 where it is so, nothing where it is not.
        new(7, "photographs and more readings in bench entries", """
            ALTER TABLE bench_entry ADD COLUMN resistance_over INTEGER;
            ALTER TABLE bench_entry ADD COLUMN diode_over INTEGER;
            ALTER TABLE bench_entry ADD COLUMN reversed INTEGER;
            ALTER TABLE bench_entry ADD COLUMN photograph TEXT;
            """),
    ];

    /// <summary>The newest step this program knows.</summary>
    internal static int Newest => All[^1].Number;

    /// <summary>Runs the steps that have not run yet, within the caller's transaction.</summary>
    /// <param name="connection">The file.</param>
    /// <param name="clock">The time for the journal.</param>
    /// <param name="upTo">The last step to run.</param>
    internal static void Run(SqliteConnection connection, TimeProvider clock, int upTo)
    {
        connection.Run("CREATE TABLE IF NOT EXISTS step (number INTEGER PRIMARY KEY, name TEXT NOT NULL, ran_at TEXT NOT NULL) STRICT");
        foreach (var step in All.Where(s => s.Number > Ran(connection) && s.Number <= upTo))
        {
            connection.Run(step.Sql);
            connection.Run("INSERT INTO step VALUES (@number, @name, @ran_at)", ("@number", step.Number), ("@name", step.Name), ("@ran_at", clock.GetUtcNow().Stamp()));
        }

        // Repeated in the first page, where it is read without opening the file.
        connection.Run(string.Create(CultureInfo.InvariantCulture, $"PRAGMA user_version = {Ran(connection)}"));
    }

    /// <summary>The last step that ran.</summary>
    /// <param name="connection">The file.</param>
    /// <returns>Its number; 0 in a file just begun.</returns>
    internal static int Ran(SqliteConnection connection) =>
        (int)connection.One("SELECT coalesce(max(number), 0) FROM step", r => r.GetInt64(0));
}
