using Duskwright.Plan.Document;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Bench;

/// <summary>Entries of the log in words, the same on paper and on the screen.</summary>
public static class LogText
{
    /// <summary>What came out, was seen and read.</summary>
    /// <param name="entry">The entry.</param>
    /// <returns>Words, parted by semicolons; empty where the entry says none.</returns>
    public static string Reading(LogEntry entry)
    {
        string?[] pieces =
        [
            entry.Passed switch { true => "passed", false => "not passed", null => null },
            entry.Lit is { } lit ? $"{lit} lit" : null,
            entry.Looks.Count > 0 ? string.Join(", ", entry.Looks.Select(l => $"{l.Lamp} {l.As switch { SeenAs.Lit => "lit", SeenAs.Dim => "dim", SeenAs.Dark => "dark", _ => "flickers" }}")) : null,
            entry.Current is { } current ? FigureText.Of(current.Amperes, "A") : null,
            entry.Voltage is { } volts ? FigureText.Of(volts.Volts, "V") : null,
            entry.Resistance is { } ohms ? FigureText.Of(ohms.Ohms, "Ω") : null,
            entry.DiodeVoltage is { } diode ? $"diode range {FigureText.Of(diode.Volts, "V")}" : null,
            entry.ResistanceOver ? "ohms: no number" : null,
            entry.DiodeOver ? "diode range: no number" : null,
            entry.Reversed ? "meter's leads changed over" : null,
            entry.Photograph is not null ? "photograph kept" : null,
            entry.Burnt is { } burnt ? FigureText.Of(burnt.Hours, "h") : null,
            entry.Despite is { } despite ? $"although {despite}" : null,
            entry.Note,
        ];
        return string.Join("; ", pieces.OfType<string>());
    }
}
