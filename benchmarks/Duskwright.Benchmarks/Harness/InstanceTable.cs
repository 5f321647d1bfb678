using System.Diagnostics;
using System.Globalization;
using Spectre.Console;

namespace Duskwright.Benchmarks.Harness;

/// <summary>The table of published problems: what is printed, what comes out here, the bound, the gap and the time.</summary>
internal sealed class InstanceTable
{
    private readonly Table _table = new Table().AddColumns("instance", "published", "ours", "bound", "gap", "seconds", "goal", "holds");

    internal bool Holds { get; private set; } = true;

    /// <summary>Solves one and adds its row.</summary>
    /// <param name="name">The instance.</param>
    /// <param name="published">The value printed in its source.</param>
    /// <param name="goal">How far above (or, for a greatest value, below) the printed one may be reached, as a share.</param>
    /// <param name="solve">Gives the value and a bound on it.</param>
    /// <param name="greatest">Whether the value is to be great.</param>
    internal void Row(string name, double published, double goal, Func<(double Ours, double Bound)> solve, bool greatest = false)
    {
        var start = Stopwatch.GetTimestamp();
        var (ours, bound) = solve();
        var seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
        var away = (greatest ? published - ours : ours - published) / Math.Max(1, Math.Abs(published));
        var printed = 1e-5 * Math.Max(1, Math.Abs(published));
        var valid = greatest ? bound >= published - printed : bound <= published + printed;
        var holds = Math.Abs(away) <= goal + 1e-5 && valid && seconds <= 60;
        Holds &= holds;
        var gap = Math.Abs(ours - bound) / Math.Max(1e-12, Math.Abs(bound));
        _table.AddRow(name, Text(published), Text(ours), Text(bound), $"{Text(100 * gap)} %", Text(seconds), goal == 0 ? "equal" : $"within {Text(100 * goal)} %", holds ? "yes" : valid ? "NO" : "NO, bound wrong");
    }

    internal void Write()
    {
        // Wide enough for one line an instance, also where the output goes to a file.
        AnsiConsole.Profile.Width = 140;
        AnsiConsole.Write(_table);
    }

    private static string Text(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
