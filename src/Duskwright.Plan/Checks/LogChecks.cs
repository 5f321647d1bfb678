using Duskwright.Plan.Document;

namespace Duskwright.Plan.Checks;

/// <summary>What was read and seen at the bench.</summary>
internal static class LogChecks
{
    internal static IEnumerable<Problem> Of(Town town)
    {
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
