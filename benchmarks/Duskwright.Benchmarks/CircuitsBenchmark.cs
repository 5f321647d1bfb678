using System.Diagnostics;
using System.Globalization;
using Duskwright.Circuits.Faulting;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Circuits.Tests.Faulting;
using Duskwright.Circuits.Tests.Solving;
using Spectre.Console;

namespace Duskwright.Benchmarks;

/// <summary>The operating point of trees of lamps, against an independent simulator in the same run, and how its time grows.</summary>
internal static class CircuitsBenchmark
{
    private const int WarmTurns = 200;
    private const int Turns = 30;

    internal static int Run()
    {
        var table = new Table().AddColumns("claim", "goal", "measured", "holds");
        var holds = true;
        void Row(string claim, string goal, double measured, string unit, bool meets)
        {
            holds &= meets;
            table.AddRow(claim, goal, $"{measured.ToString("0.###", CultureInfo.InvariantCulture)} {unit}", meets ? "yes" : "NO");
        }

        foreach (var (lamps, times, runs) in new[] { (1_000, 100, 30), (10_000, 300, 2) })
        {
            var network = LampTree.Of(lamps, LampTree.Twos);
            var ratio = Ngspice.AnalysisSeconds(NetList.Of(network).Skip(1), runs) / Seconds(network);
            Row($"{lamps} lamps on a tree, times faster than ngspice", $"at least {times}", ratio, "", ratio >= times);
        }

        var (few, many) = (Seconds(LampTree.Of(100, LampTree.Twos)), Seconds(LampTree.Of(100_000, LampTree.Twos)));
        var exponent = Math.Log(many / few) / Math.Log(1_000);
        Row("100 to 100,000 lamps, exponent of the time", "at most 1.1", exponent, "", exponent <= 1.1);
        Row("100,000 lamps", "under 50 ms", many * 1e3, "ms", many < 0.05);
        var mebibytes = GC.GetTotalMemory(forceFullCollection: false) / 1048576.0;
        Row("100,000 lamps, memory held", "under 300 MB", mebibytes, "MB", mebibytes < 300);
        var town = LampTree.Of(1_000, LampTree.Twos);
        var faults = FaultList.Of(town, LampTree.Pairs(1_000), []);
        _ = FaultSweep.Of(town, faults);
        var sweep = Median(() => FaultSweep.Of(town, faults));
        Row($"{faults.Length} single faults of 1,000 lamps", "under 500 ms", sweep * 1e3, "ms", faults.Length >= 5_000 && sweep < 0.5);
        AnsiConsole.Write(table);
        return holds ? 0 : 1;
    }

    private static double Seconds(Network network)
    {
        var solver = new NetworkSolver(network);
        var warm = Stopwatch.StartNew();
        for (var turn = 0; turn < WarmTurns || warm.ElapsedMilliseconds < 500; turn++)
        {
            _ = solver.Solve(network);
        }

        return Median(() => solver.Solve(network));
    }

    private static double Median(Action work)
    {
        var times = Enumerable.Range(0, Turns).Select(_ =>
        {
            var start = Stopwatch.GetTimestamp();
            work();
            return Stopwatch.GetElapsedTime(start).TotalSeconds;
        }).Order().ToList();
        return times[Turns / 2];
    }
}
