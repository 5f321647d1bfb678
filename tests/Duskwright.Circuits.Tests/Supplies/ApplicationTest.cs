using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Tests.Supplies;

/// <summary>An application test of IEC 60086-2 as a row of tests/Reference/iec60086-2-application-tests.csv states it.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Name">What it stands for.</param>
/// <param name="Day">Loads and rests of one day.</param>
/// <param name="EndVolts">Voltage at which the test ends, V.</param>
/// <param name="LeastAverage">The minimum average duration, from memory, in <paramref name="Unit"/>.</param>
/// <param name="Unit">h, min or pulses.</param>
/// <param name="SecondsPerUnit">Loaded seconds of one unit.</param>
internal sealed partial record ApplicationTest(
    string Cell, string Name, ImmutableArray<BenchSpell> Day, double EndVolts, double LeastAverage, string Unit, double SecondsPerUnit)
{
    private const double Hour = 3600;

    /// <summary>Every row that states a duration.</summary>
    internal static ImmutableArray<ApplicationTest> All() => [.. ReferenceRows.Of("iec60086-2-application-tests.csv").Where(r => r["mad_value_memory"].Length > 0).Select(Of)];

    /// <summary>How long a cell holds out, as a multiple of the minimum average.</summary>
    internal double Ratio(CellLaw cell) =>
        BenchDischarge.Run(cell, CellState.At(cell, 1), Day, EndVolts).LoadedSeconds / SecondsPerUnit / LeastAverage;

    private static ApplicationTest Of(IReadOnlyDictionary<string, string> row)
    {
        var (day, pulseSeconds) = row["load_unit"].Contains("mW", StringComparison.Ordinal) ? Camera(row["load_unit"]) : Pulses(row);
        var unit = row["mad_unit"];
        var secondsPerUnit = unit switch { "h" => Hour, "min" => 60, "pulses" => pulseSeconds, _ => throw new FormatException($"{unit} is no unit of duration.") };
        return new ApplicationTest(row["cell_iec"], $"{row["cell_iec"]} {row["application"]}", day, row.Number("end_voltage_v"), row.Number("mad_value_memory"), unit, secondsPerUnit);
    }

    // "15 s/min, 8 h/d", "4 min/h, 8 h/d" or "1 h/d".
    private static (ImmutableArray<BenchSpell> Day, double PulseSeconds) Pulses(IReadOnlyDictionary<string, string> row)
    {
        var load = new BenchLoad(row["load_unit"] == "A" ? BenchLoadKind.Current : BenchLoadKind.Resistance, row.Number("load_value"));
        var hoursPerDay = Number(HoursADay().Match(row["duty"]).Groups["n"].Value) * Hour;
        var pulse = PulseOf().Match(row["duty"]);
        var (on, period) = !pulse.Success ? (hoursPerDay, hoursPerDay)
            : pulse.Groups["per"].Value == "min" ? (Number(pulse.Groups["n"].Value), 60)
            : (60 * Number(pulse.Groups["n"].Value), Hour);
        return (BenchDischarge.Day(load, on, period, hoursPerDay), on);
    }

    // "1500 mW 2 s + 650 mW 28 s", ten times in the first five minutes of each hour: one pulse is both parts.
    private static (ImmutableArray<BenchSpell> Day, double PulseSeconds) Camera(string loads)
    {
        const int CyclesPerHour = 10;
        var parts = PowerSpell().Matches(loads)
            .Select(m => new BenchSpell(new BenchLoad(BenchLoadKind.Power, Number(m.Groups["mw"].Value) / 1000), Number(m.Groups["s"].Value))).ToList();
        var pulseSeconds = parts.Sum(p => p.Seconds);
        return ([.. Enumerable.Repeat(parts, CyclesPerHour).SelectMany(p => p), new BenchSpell(null, Hour - (CyclesPerHour * pulseSeconds))], pulseSeconds);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex("""(?<n>[0-9.]+) h/d""", RegexOptions.ExplicitCapture)]
    private static partial Regex HoursADay();

    [GeneratedRegex("""(?<n>[0-9.]+) (s/(?<per>min)|min/(?<per>h))\b""", RegexOptions.ExplicitCapture)]
    private static partial Regex PulseOf();

    [GeneratedRegex("""(?<mw>[0-9]+) mW (?<s>[0-9]+) s""", RegexOptions.ExplicitCapture)]
    private static partial Regex PowerSpell();
}
