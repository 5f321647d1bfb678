using Duskwright.Plan.Document;

namespace Duskwright.Plan.Checks;

/// <summary>What was read and seen at the bench.</summary>
internal static class LogChecks
{
    // A year without a break.
    private const double MostHours = 8760;

    internal static IEnumerable<Problem> Of(Town town)
    {
        var known = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < town.Log.Count; i++)
        {
            var (entry, path) = (town.Log[i], $"log[{i}]");
            if (entry.Current is { Milliamperes: < 0 } current)
            {
                yield return Negative($"{path}.current_ma", entry, $"{current.Milliamperes} mA");
            }

            if (entry.Voltage is { Volts: < 0 } volts)
            {
                yield return Negative($"{path}.voltage_v", entry, $"{volts.Volts} V");
            }

            if (entry.Resistance is { Ohms: < 0 } ohms)
            {
                yield return Negative($"{path}.resistance_ohm", entry, $"{ohms.Ohms} ohm");
            }

            if (entry.DiodeVoltage is { Volts: < 0 } diode)
            {
                yield return Negative($"{path}.diode_voltage_v", entry, $"{diode.Volts} V");
            }

            if (entry is { Resistance: not null, ResistanceOver: true } or { DiodeVoltage: not null, DiodeOver: true })
            {
                yield return new Problem($"{path}", "reading", $"The log of {Day(entry)} reads a number and says that the meter showed none.", "Leave one of the two out.");
            }

            if (entry.Photograph is { } photograph && !(photograph.Length == 64 && photograph.All(char.IsAsciiHexDigitLower)))
            {
                yield return new Problem($"{path}.photograph", "reading", $"The log of {Day(entry)} names the photograph “{photograph}”; the id of a picture is 64 hexadecimal digits.", "Leave it out where there is no picture.");
            }

            if (entry.Looks.GroupBy(l => l.Lamp).FirstOrDefault(g => g.Skip(1).Any()) is { Key: var lamp })
            {
                yield return new Problem($"{path}.looks", "twice", $"The log of {Day(entry)} says twice what lamp {lamp} did.", "Say it once.");
            }

            if (entry.Burnt is { Hours: < 0 or > MostHours } burnt)
            {
                yield return new Problem($"{path}.burnt_h", "reading", $"The log of {Day(entry)} says the lamps burnt {burnt.Hours} h; 0 to {MostHours} h is allowed.", "Write the hours since the entry before.");
            }

            if (entry.Corrects is { } corrected && !known.Contains(corrected))
            {
                yield return new Problem($"{path}.corrects", "points-at-nothing", $"The log of {Day(entry)} corrects the entry {corrected}, and no earlier entry has that id.", "Name an entry that stands before it, or leave this out.");
            }
            else if (entry is { Kind: LogKind.Withdrawn, Corrects: null })
            {
                yield return new Problem($"{path}.corrects", "missing", $"The log of {Day(entry)} withdraws an entry and does not say which.", "Name the id of the entry that was wrong.");
            }

            if (entry.Id is { } id && !known.Add(id))
            {
                yield return new Problem($"{path}.id", "twice", $"Two entries of the log have the id {id}.", "Give each entry an id of its own, or none.");
            }

            if (entry.Lit is < 0)
            {
                yield return new Problem($"{path}.lit", "reading", $"The log of {Day(entry)} counts {entry.Lit} lamps lit; 0 or more is allowed.", "Write 0 where none was lit.");
            }
        }
    }

    // A meter shows a minus sign where its leads are changed over: the amount is what counts.
    private static Problem Negative(string path, LogEntry entry, string value) => new(
        path, "reading", $"The log of {Day(entry)} reads {value}; 0 or more is allowed.", "Write it without the sign; a pair that is swapped belongs in the note.");

    private static string Day(LogEntry entry) => entry.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
