using System.Diagnostics;
using System.Globalization;
using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Supplies;
using Duskwright.Circuits.Tests.Supplies;
using Duskwright.Circuits.Tolerance;
using Spectre.Console;

namespace Duskwright.Benchmarks.Cells;

/// <summary>The catalogue's cells against published discharges, and how long packs and draws take. Prints measured against goal.</summary>
internal static class CellsBenchmark
{
    private const int Turns = 30;
    private const int Packs = 20;
    private const double Hour = 3600;

    // White at 2 mA behind 820 Ω on three cells: common practice, no source.
    private static readonly LedLaw White = new(2.7, 1e-3, 2.18, 12);

    internal static int Run()
    {
        var applications = Applications();
        var table = new Table().AddColumns("claim", "goal", "measured", "holds");
        var curve = CurveError();
        var twenty = Median(Turns, TwentyPacks);
        var town = Town(500);
        var draws = Median(Turns, () => MonteCarlo.Run(town, Spreads.Usual, [], [Probe.Amps("pack", 0)], 10_000, 1).Draws);
        var holds = Row(table, "LR6 at 100 mA against a maker's typical curve (read)", "within 0.01 V", $"{Text(curve, "0.0000")} V", curve <= 0.01)
            & Row(table, "20 packs over a 100 h schedule, 7 h a day", "under 100 ms", $"{Text(twenty, "0.0")} ms", twenty < 100)
            & Row(table, "10,000 draws of a 500-lamp town at one hour", "under 1000 ms", $"{Text(draws, "0")} ms", draws < 1000);
        AnsiConsole.Write(table);
        return holds & applications ? 0 : 1;
    }

    private static bool Applications()
    {
        var table = new Table().Title("Application tests of IEC 60086-2: conditions read, minimum average durations from memory").AddColumns("test", "least average", "lasts", "times", "1.0 to 2.0");
        var holds = true;
        foreach (var test in ApplicationTest.All())
        {
            var ratio = test.Ratio(UsualCells.Of(test.Cell));
            var within = ratio is >= 1 and <= 2;
            table.AddRow(test.Name, $"{Text(test.LeastAverage, "0.#")} {test.Unit}", $"{Text(ratio * test.LeastAverage, "0.#")} {test.Unit}", Text(ratio, "0.00"), within ? "yes" : "NO");
            holds &= within;
        }

        AnsiConsole.Write(table);
        return holds;
    }

    private static double CurveError()
    {
        var cell = UsualCells.Of("LR6");
        var (state, hours, most) = (CellState.At(cell, 1), 0.0, 0.0);
        foreach (var row in ReferenceRows.Of("battery-discharge-curve-lr6-100ma.csv"))
        {
            state = cell.Advance(state, 0.1, (row.Number("time_h") - hours) * Hour);
            hours = row.Number("time_h");
            var (openVolts, ohms) = cell.At(state);
            most = Math.Max(most, Math.Abs(openVolts - (0.1 * ohms) - row.Number("terminal_voltage_v")));
        }

        return most;
    }

    private static int TwentyPacks()
    {
        var law = new PackLaw(UsualCells.Of("LR14"), 3, 1, 0.2);
        var network = Town(24);
        return Enumerable.Range(0, Packs).Sum(_ => Discharge.Run(network, [new PackOnNetwork("pack", law, CellState.At(law.Cell, 1))], new DischargeSettings(7 * Hour, 100 * Hour)).Steps.Length);
    }

    /// <summary>Houses of two lamps, each on a pair of its own from the pack.</summary>
    private static Network Town(int lamps)
    {
        var elements = new List<Element> { new SourceElement("pack", 1, 0, 4.65, 0.9) };
        var nodes = 2;
        for (var house = 0; house < lamps / 2; house++)
        {
            var (plus, minus) = (nodes++, nodes++);
            elements.Add(new ResistorElement($"plus {house}", 1, plus, 0.4));
            elements.Add(new ResistorElement($"minus {house}", minus, 0, 0.4));
            elements.Add(new LampElement($"lamp {house}.1", plus, minus, White, 820));
            elements.Add(new LampElement($"lamp {house}.2", plus, minus, White, 820));
        }

        return new Network(nodes, [.. elements]);
    }

    private static bool Row(Table table, string claim, string goal, string measured, bool holds)
    {
        table.AddRow(claim, goal, measured, holds ? "yes" : "NO");
        return holds;
    }

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private static double Median(int turns, Func<int> work)
    {
        _ = work();
        var times = Enumerable.Range(0, turns).Select(_ =>
        {
            var start = Stopwatch.GetTimestamp();
            _ = work();
            return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }).Order().ToList();
        return times[turns / 2];
    }
}
